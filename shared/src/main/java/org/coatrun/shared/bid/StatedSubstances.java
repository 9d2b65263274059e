package org.coatrun.shared.bid;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.ModelFinding;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.job.SubstanceRule;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Classification;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Evidence;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Substance;

/** Takes members for steel, or not, as the job file says. */
public final class StatedSubstances {

  private final List<SubstanceRule> rules;
  private final Set<ElementId> decided = new HashSet<>();
  private final Set<Integer> used = new HashSet<>();

  private StatedSubstances(List<SubstanceRule> rules) {
    this.rules = rules;
  }

  /**
   * The building with the members that a rule matches taken for what it says; the last rule that
   * matches wins. What the model leaves open about them is no longer a finding; a rule that matches
   * nothing is.
   */
  public static Building in(Building building, List<SubstanceRule> rules) {
    return rules.isEmpty() ? building : new StatedSubstances(rules).applied(building);
  }

  private Building applied(Building b) {
    List<Member> members = b.members().stream().map(this::member).toList();
    List<Finding> findings =
        new ArrayList<>(b.findings().stream().filter(f -> !isSettled(f, b)).toList());
    for (int i = 0; i < rules.size(); i++) {
      if (!used.contains(i)) {
        findings.add(
            Finding.of(
                WorkFinding.RULE_UNUSED, "Rule " + (i + 1) + " of substances matches nothing."));
      }
    }
    return new Building(
        b.name(),
        b.origin(),
        b.files(),
        b.storeys(),
        members,
        b.decks(),
        b.slabs(),
        b.walls(),
        b.bulks(),
        b.stairs(),
        b.spaces(),
        b.openings(),
        findings);
  }

  private Member member(Member member) {
    SubstanceRule last = null;
    for (int i = 0; i < rules.size(); i++) {
      if (matches(rules.get(i), member)) {
        used.add(i);
        last = rules.get(i);
      }
    }
    if (last == null) {
      return member;
    }
    decided.add(member.id());
    return new Member(
        member.identity(),
        member.role(),
        member.section(),
        classification(last, member),
        member.materials(),
        member.properties(),
        member.body());
  }

  private static Classification classification(SubstanceRule rule, Member member) {
    Substance before = member.classification().substance();
    Substance other = before == Substance.STEEL ? Substance.OTHER : before;
    List<Evidence> evidence = new ArrayList<>();
    evidence.add(new Evidence(Evidence.Source.JOB, rule.reason().orElse("")));
    evidence.addAll(member.classification().evidence());
    return new Classification(rule.steel() ? Substance.STEEL : other, evidence);
  }

  private static boolean matches(SubstanceRule rule, Member member) {
    Identity identity = member.identity();
    return anyNamed(rule.name(), Stream.of(identity.mark(), identity.name()))
        && anyNamed(rule.typeName(), Stream.of(identity.typeName()))
        && RuleMatch.section(rule.section(), member.section().name())
        && anyNamed(rule.material(), member.materials().stream().map(m -> m.name()))
        && anyNamed(rule.modelClass(), Stream.of(identity.sourceClass()))
        && rule.guid().map(g -> g.equals(identity.guid())).orElse(true);
  }

  private static boolean anyNamed(Optional<String> pattern, Stream<String> names) {
    return pattern.isEmpty() || names.anyMatch(name -> RuleMatch.named(pattern, name));
  }

  private boolean isSettled(Finding finding, Building building) {
    boolean about =
        finding.code() == ModelFinding.UNKNOWN_SUBSTANCE
            || finding.code() == ModelFinding.CONTRADICTORY_MATERIAL;
    return about
        && decided.stream()
            .anyMatch(
                id -> id.step() == finding.step() && building.fileName(id).equals(finding.file()));
  }
}
