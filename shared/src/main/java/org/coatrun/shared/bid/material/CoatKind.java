package org.coatrun.shared.bid.material;

import org.coatrun.shared.bid.Coated;
import org.coatrun.shared.bid.CoatedMember;
import org.coatrun.shared.job.SprayRates;
import org.coatrun.shared.job.Waste;
import org.coatrun.shared.units.Share;

/** Kinds of work that waste and rates of the job tell apart. */
public enum CoatKind {
  COLUMN("columns"),
  BEAM("beams and girders"),
  BRACE("braces and hangers"),
  JOIST("joists, purlins and rafters"),
  TRUSS("trusses"),
  DECK("deck"),
  OTHER("other steel");

  private final String word;

  CoatKind(String word) {
    this.word = word;
  }

  /** In plain English, for reports. */
  public String word() {
    return word;
  }

  /** The kind of an element. */
  public static CoatKind of(Coated item) {
    if (!(item instanceof CoatedMember member)) {
      return DECK;
    }
    return switch (member.kind()) {
      case COLUMN, HOLLOW_COLUMN -> COLUMN;
      case BEAM -> BEAM;
      case BRACE -> BRACE;
      case JOIST -> JOIST;
      case TRUSS -> TRUSS;
      case OTHER -> OTHER;
    };
  }

  /** The share of what is sprayed that is lost. */
  public Share waste(Waste waste) {
    return switch (this) {
      case COLUMN -> waste.column();
      case BEAM -> waste.beam();
      case BRACE -> waste.brace();
      case JOIST -> waste.joist();
      case TRUSS -> waste.truss();
      case DECK -> waste.deck();
      case OTHER -> waste.other();
    };
  }

  /** Board feet in place an hour of a crew with one nozzle, from the floor. */
  public double boardFeetAnHour(SprayRates rates) {
    return switch (this) {
      case COLUMN -> rates.column();
      case BEAM -> rates.beam();
      case BRACE -> rates.brace();
      case JOIST -> rates.joist();
      case TRUSS -> rates.truss();
      case DECK -> rates.deck();
      case OTHER -> rates.other();
    };
  }
}
