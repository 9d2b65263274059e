package org.coatrun.shared.bid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.ModelFinding;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Classification;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Material;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.ModelFile;
import org.coatrun.shared.model.Properties;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.SectionName;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.shape.Vec3;
import org.junit.jupiter.api.Test;

class StatedSubstancesTest {

  private static final Member OPEN = member(10, "Hanger", "X9", Substance.UNKNOWN, "");
  private static final Member BEAM = member(11, "Beam", "HEA200", Substance.STEEL, "S355");
  private static final Member POST = member(12, "Post", "HEB160", Substance.STEEL, "S235");

  private static Member member(
      long step, String name, String section, Substance substance, String material) {
    return new Member(
        new Identity(
            new ElementId(0, step),
            "guid" + step,
            "IfcMember",
            name,
            "",
            "",
            Optional.empty(),
            Optional.empty()),
        Role.MEMBER,
        new SectionName(section, SectionName.Source.PROFILE),
        new Classification(substance, List.of()),
        List.of(new Material(material, "", OptionalDouble.empty())),
        Properties.none(),
        Body.none());
  }

  private static Building building() {
    return new Building(
        "Boat House",
        Vec3.ZERO,
        List.of(new ModelFile("boat.ifc", "IFC4", "IFC4", "metre", 10, "")),
        List.of(),
        List.of(OPEN, BEAM, POST),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(
            new Finding(ModelFinding.UNKNOWN_SUBSTANCE, "boat.ifc", 0, 10, "guid10", "unknown")));
  }

  private static Building stated(String rules) {
    return StatedSubstances.in(
        building(), Job.parse("job.yaml", "substances:\n" + rules).substances());
  }

  private static List<Substance> substances(Building building) {
    return building.members().stream().map(m -> m.classification().substance()).toList();
  }

  @Test
  void takesForSteelWhatTheJobSaysIsAndDropsTheOpenQuestion() {
    Building told = stated("  - {name: Hang*, steel: yes, reason: by the detailer}\n");

    assertThat(substances(told)).containsOnly(Substance.STEEL);
    assertThat(told.findings()).isEmpty();
    assertThat(told.members().get(0).classification().evidence().get(0).text())
        .isEqualTo("by the detailer");
    assertThat(told.members().subList(1, 3)).containsExactly(BEAM, POST);
  }

  @Test
  void theLastRuleThatMatchesWins() {
    Building told =
        stated(
            """
              - {model-class: ifcmember, steel: no}
              - {section: "HEA 200", steel: yes}
              - {material: S235, guid: guid11, steel: no}
            """);

    assertThat(substances(told))
        .containsExactly(Substance.UNKNOWN, Substance.STEEL, Substance.OTHER);
    assertThat(told.findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.code()).isEqualTo(WorkFinding.RULE_UNUSED);
              assertThat(f.sentence()).contains("Rule 3");
            });
  }

  @Test
  void withoutRulesTheBuildingIsTheSame() {
    Building plain = building();
    assertThat(StatedSubstances.in(plain, List.of())).isSameAs(plain);
  }
}
