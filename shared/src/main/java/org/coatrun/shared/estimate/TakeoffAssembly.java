package org.coatrun.shared.estimate;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Function;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.FindingCode;
import org.coatrun.shared.finding.LedgerFinding;
import org.coatrun.shared.finding.ModelFinding;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.Storey;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.surface.Surfaces;

/** Puts the takeoff of a building together from what was measured of its elements. */
public final class TakeoffAssembly {

  private final Building building;
  private final Surfaces surfaces;
  private final Map<ElementId, Storey> storeys = new HashMap<>();
  private final Map<ElementId, ElementId> doubles = new HashMap<>();
  private final Set<ElementId> decks = new HashSet<>();
  private final Queue<Finding> findings = new ConcurrentLinkedQueue<>();
  private final Set<String> reported = new HashSet<>();

  private TakeoffAssembly(Building building, Surfaces surfaces) {
    this.building = building;
    this.surfaces = surfaces;
    building.decks().forEach(deck -> decks.add(deck.id()));
    building.storeys().forEach(storey -> storeys.put(storey.id(), storey));
    surfaces.frame().doubles().forEach(d -> doubles.put(d.doubled(), d.kept()));
    findings.addAll(building.findings());
  }

  private static String key(FindingCode code, String file, long step) {
    return code.code() + ' ' + step + ' ' + file;
  }

  /**
   * The takeoff of {@code building}: a line for each member and each deck. A steel element or a
   * deck that nothing was measured of is unresolved.
   */
  public static Takeoff assemble(Building building, Surfaces surfaces) {
    TakeoffAssembly assembly = new TakeoffAssembly(building, surfaces);
    assembly.findings.addAll(surfaces.findings());
    assembly.findings.forEach(f -> assembly.reported.add(key(f.code(), f.file(), f.step())));
    List<MemberLine> members = building.members().parallelStream().map(assembly::line).toList();
    List<DeckLine> decks = building.decks().stream().map(assembly::line).toList();
    return new Takeoff(building, members, decks, List.copyOf(assembly.findings), surfaces);
  }

  private MemberLine line(Member member) {
    Outcome outcome = outcome(member);
    Identity identity = member.identity();
    report(identity, outcome);
    outcome.quantities().flatMap(Quantities::weight).ifPresent(weight -> doubt(member, weight));
    return new MemberLine(member, storey(identity), outcome, surfaces.frame().member(member.id()));
  }

  private DeckLine line(Deck deck) {
    boolean sheet = deck.form() == Deck.Form.SHEET;
    Outcome outcome =
        measured(
            deck,
            m ->
                sheet
                    ? Optional.of(Weight.of("", m.length(), m.volume(), Optional.empty()))
                    : Optional.empty());
    report(deck.identity(), outcome);
    return new DeckLine(deck, storey(deck.identity()), outcome);
  }

  private Outcome outcome(Member member) {
    if (decks.contains(member.id())) {
      return new Outcome.LeftOut(Reasons.DECK);
    }
    Substance substance = member.classification().substance();
    if (substance == Substance.UNKNOWN) {
      return new Outcome.Unresolved(
          ModelFinding.UNKNOWN_SUBSTANCE, "nothing says what it is made of");
    }
    if (substance != Substance.STEEL) {
      return new Outcome.LeftOut(Reasons.notSteel(member.classification()));
    }
    if (member.role() == Role.FASTENER) {
      return new Outcome.LeftOut(Reasons.FASTENER);
    }
    ElementId kept = doubles.get(member.id());
    if (kept != null) {
      return new Outcome.LeftOut(doubled(member, kept));
    }
    String section = member.section().name();
    return measured(
        member, m -> Optional.of(Weight.of(section, m.length(), m.volume(), m.section())));
  }

  private String doubled(Member member, ElementId kept) {
    String reason = "the model holds it twice: counted as #" + kept.step();
    add(
        LedgerFinding.DOUBLED,
        member.identity(),
        Reasons.name(member.identity()) + " fills the place of #" + kept.step() + ".");
    return reason;
  }

  private Outcome measured(
      Element element, Function<Measurement.Measured, Optional<Weight>> weight) {
    Measurement measurement = surfaces.of(element.id()).orElse(null);
    if (measurement instanceof Measurement.Measured m) {
      return new Outcome.Counted(
          new Quantities(
              m.length(),
              m.volume(),
              weight.apply(m),
              m.ledger(),
              m.section(),
              m.covers(),
              m.fluteVoids(),
              m.soffit()));
    }
    if (measurement instanceof Measurement.Unresolved u) {
      return new Outcome.Unresolved(u.code(), u.sentence());
    }
    return new Outcome.Unresolved(LedgerFinding.NOT_MEASURED, "it was not measured");
  }

  private Optional<Storey> storey(Identity identity) {
    return identity.storey().map(storeys::get);
  }

  private void report(Identity identity, Outcome outcome) {
    if (outcome instanceof Outcome.Unresolved unresolved) {
      reportOnce(identity, unresolved);
    }
  }

  // Reader and geometry may have reported the same thing already, in better words.
  private void reportOnce(Identity identity, Outcome.Unresolved unresolved) {
    if (!reported.contains(key(unresolved.code(), file(identity), identity.id().step()))) {
      add(
          unresolved.code(),
          identity,
          Reasons.name(identity) + " is not in the numbers: " + sentence(unresolved.reason()));
    }
  }

  private void doubt(Member member, Weight weight) {
    if (weight.isDoubtful()) {
      double apart = weight.disagreement().orElseThrow();
      add(
          LedgerFinding.WEIGHT_DISAGREES,
          member.identity(),
          String.format(
              Locale.ROOT,
              "%s is called %s, which is %.1f %% %s than its drawn section; %s weight is used.",
              Reasons.name(member.identity()),
              member.section().name(),
              Math.abs(apart) * 100,
              apart > 0 ? "heavier" : "lighter",
              weight.nominal().isPresent() ? "the nominal" : "the drawn"));
    }
  }

  private void add(FindingCode code, Identity identity, String sentence) {
    findings.add(
        new Finding(code, file(identity), 0, identity.id().step(), identity.guid(), sentence));
  }

  private static String sentence(String reason) {
    return reason.endsWith(".") ? reason : reason + ".";
  }

  private String file(Identity identity) {
    return building.fileName(identity.id());
  }
}
