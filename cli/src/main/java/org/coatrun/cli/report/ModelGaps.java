package org.coatrun.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coatrun.shared.estimate.NominalWeight;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.Substance;

/** What a model lacks for this job, each in a sentence, with what follows from it. */
final class ModelGaps {

  private static final int SECTIONS_LOOKED_AT = 200;

  private final Building building;
  private final List<Member> steel = new ArrayList<>();
  private final List<String> gaps = new ArrayList<>();
  private final Map<String, Member> bySection = new LinkedHashMap<>();
  private int lost;
  private int unknown;
  private int bodiless;
  private int nameless;

  private ModelGaps(Building building) {
    this.building = building;
    building.members().forEach(this::look);
  }

  /** At all of a member at once: of a large building, members take longer to reach than to ask. */
  private void look(Member member) {
    lost += member.identity().storey().isEmpty() ? 1 : 0;
    unknown += member.classification().substance() == Substance.UNKNOWN ? 1 : 0;
    if (member.classification().isSteel()) {
      steel.add(member);
      bodiless += member.body().isPresent() ? 0 : 1;
      if (isFraming(member)) {
        frame(member);
      }
    }
  }

  private void frame(Member member) {
    String section = member.section().name();
    if (section.isEmpty()) {
      nameless++;
    } else {
      bySection.putIfAbsent(section, member);
    }
  }

  private static boolean isFraming(Member member) {
    Role role = member.role();
    return role != Role.PLATE && role != Role.FASTENER && role != Role.OTHER;
  }

  /**
   * The gaps of {@code building}. Bodies stay undecoded, but for one member of each section, and of
   * 200 sections at most.
   */
  static List<String> of(Building building) {
    ModelGaps gaps = new ModelGaps(building);
    gaps.structure();
    gaps.steel();
    gaps.sections();
    gaps.surroundings();
    return List.copyOf(gaps.gaps);
  }

  private void structure() {
    when(building.storeys().isEmpty(), "No storeys: nothing can be told floor by floor.");
    when(
        !building.storeys().isEmpty() && lost > 0,
        Words.count(lost, "member is", "members are") + " on no storey.");
  }

  private void steel() {
    when(steel.isEmpty(), "No steel found: there is nothing to coat, or the model does not say.");
    when(
        unknown > 0,
        Words.count(unknown, "member", "members")
            + " without a material or a section that tells: unresolved until it does.");
    when(
        bodiless > 0,
        Words.count(bodiless, "steel element", "steel elements") + " without a body.");
    when(
        !steel.isEmpty() && steel.parallelStream().noneMatch(ModelGaps::hasFireRating),
        "No fire ratings on steel: the hours must come from elsewhere.");
  }

  private void sections() {
    when(
        nameless > 0,
        Words.count(nameless, "steel member", "steel members")
            + " without the name of a section: the drawn body decides.");
    long unweighed =
        bySection.keySet().stream().filter(name -> NominalWeight.of(name).isEmpty()).count();
    when(
        unweighed > 0,
        Words.count(unweighed, "section", "sections")
            + " whose name states no weight: weight by volume.");
    long sharp =
        bySection.values().stream()
            .limit(SECTIONS_LOOKED_AT)
            .filter(m -> m.body().isPresent() && Fillets.areMissing(m.body().shape()))
            .count();
    when(
        sharp > 0,
        Words.count(sharp, "section", "sections")
            + " without fillet radii: perimeters with sharp corners, the conservative reading.");
  }

  private void surroundings() {
    when(building.decks().isEmpty(), "No deck found.");
    when(
        building.slabs().isEmpty() && building.decks().isEmpty(),
        "No slabs: the tops of beams count as exposed, and nothing tells floors from air.");
    when(building.walls().isEmpty(), "No walls: nothing stands in the way of a hose.");
    when(building.spaces().isEmpty(), "No spaces: zones cannot be named by room.");
  }

  private static boolean hasFireRating(Element element) {
    return element instanceof Member m
        && m.properties().text("FireRating").filter(text -> !text.isBlank()).isPresent();
  }

  private void when(boolean missing, String sentence) {
    if (missing) {
      gaps.add(sentence);
    }
  }
}
