package org.coatrun.testmodels.erect;

import org.coatrun.testmodels.facts.Matter;

/** Materials by the names that a model gives them. */
public enum Grade {
  A992("Steel ASTM A992", "steel", Matter.STEEL, 7850),
  A500("Steel ASTM A500 Gr. C", "steel", Matter.STEEL, 7850),
  A36("Steel ASTM A36", "steel", Matter.STEEL, 7850),
  DECK("Steel sheet galvanised G60", "steel", Matter.STEEL_DECK, 7850),
  CONCRETE("Concrete 4000 psi", "concrete", Matter.CONCRETE, 2400),
  LIGHT_CONCRETE("Lightweight concrete 110 pcf", "concrete", Matter.CONCRETE, 1760),
  TIMBER("Glued laminated timber", "wood", Matter.TIMBER, 480),
  GLASS("Laminated glass", "glass", Matter.GLASS, 2500),
  ALUMINIUM("Aluminium 6063-T6", "aluminium", Matter.ALUMINIUM, 2700),
  REBAR("Reinforcement Grade 60", "steel", Matter.REINFORCEMENT, 7850),
  GYPSUM("Gypsum board on studs", "gypsum", Matter.GYPSUM, 800);

  private final String title;
  private final String category;
  private final Matter matter;
  private final double density;

  Grade(String title, String category, Matter matter, double density) {
    this.title = title;
    this.category = category;
    this.matter = matter;
    this.density = density;
  }

  /** Returns the material's name in the model. */
  public String title() {
    return title;
  }

  /** Returns IFC4's category of the material. */
  public String category() {
    return category;
  }

  /** Returns what it is. */
  public Matter matter() {
    return matter;
  }

  /** Returns the density in kg/m3. */
  public double density() {
    return density;
  }
}
