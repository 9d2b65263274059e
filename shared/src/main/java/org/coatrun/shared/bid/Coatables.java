package org.coatrun.shared.bid;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.coatrun.shared.estimate.DeckLine;
import org.coatrun.shared.estimate.Line;
import org.coatrun.shared.estimate.MemberLine;
import org.coatrun.shared.estimate.Quantities;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.frame.FrameClass;
import org.coatrun.shared.frame.FrameMember;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.surface.FluteVoid;
import org.coatrun.shared.surface.SectionMeasure;
import org.coatrun.shared.surface.Standing;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.SectionFactor;

/**
 * The members and decks of a takeoff as the bid sees them: those that count and have a face to
 * coat.
 */
final class Coatables {

  private final Takeoff takeoff;
  private final boolean compactness;
  private final WorkingFloors floors;
  private final RoofPlates roofs;
  private final LoadPaths loads;
  private final Map<ElementId, List<ElementId>> hosts;
  private final PlaceFinder places;
  private final FluteBeds flutes;

  private Coatables(Takeoff takeoff, boolean compactness) {
    this.takeoff = takeoff;
    this.compactness = compactness;
    this.floors = new WorkingFloors(takeoff.building());
    this.roofs = RoofPlates.of(takeoff.building(), takeoff.surfaces());
    CompletableFuture<LoadPaths> paths =
        CompletableFuture.supplyAsync(() -> new LoadPaths(takeoff, roofs));
    this.hosts = PlaceFinder.hosts(takeoff);
    this.flutes = FluteBeds.of(takeoff);
    this.loads = paths.join();
    this.places = new PlaceFinder(takeoff, floors, loads, roofs, hosts);
  }

  /**
   * The members and decks of a takeoff.
   *
   * @param compactness whether to look for compact sections, which decodes every beam once more
   */
  static Coatables with(Takeoff takeoff, boolean compactness) {
    return new Coatables(takeoff, compactness);
  }

  LoadPaths loads() {
    return loads;
  }

  /** The members that a plate is on. */
  List<ElementId> hosts(ElementId plate) {
    return hosts.getOrDefault(plate, List.of());
  }

  /** What is sprayed of an element from each floor. */
  List<Coated> pieces(Coated item) {
    return item instanceof CoatedMember member ? pieces(member) : List.of(item);
  }

  private List<Coated> pieces(CoatedMember member) {
    Place place = member.place();
    Optional<Standing> standing = takeoff.surfaces().standing(member.id());
    var whole = new WorkingFloors.Piece(place.workingFloor(), place.top(), 1);
    List<WorkingFloors.Piece> pieces = floors.pieces(member.kind(), standing, whole);
    return pieces.size() == 1
        ? List.of(member)
        : pieces.stream()
            .<Coated>map(p -> member.piece(place.from(p.floor()).upTo(p.top()), p.share()))
            .toList();
  }

  // Side by side, since much is still to be read from the model; the order stays.
  List<Coated> all() {
    Stream<Coated> members =
        takeoff.members().parallelStream()
            .flatMap(line -> quantities(line).map(q -> member(line, q)).stream());
    Stream<Coated> decks =
        takeoff.decks().stream().flatMap(line -> quantities(line).map(q -> deck(line, q)).stream());
    return Stream.concat(members, decks).toList();
  }

  /** What was measured of an element, where it has a face to coat. */
  static Optional<Quantities> quantities(Line line) {
    return line.outcome().quantities().filter(q -> q.ledger().exposed().squareMetres() > 0);
  }

  private CoatedMember member(MemberLine line, Quantities q) {
    Member member = line.member();
    Optional<FrameMember> frame = line.frame();
    return new CoatedMember(
        member.id(),
        member.identity().guid(),
        label(member.identity()),
        places.of(line),
        member.role(),
        MemberKinds.of(line, q),
        frame.map(FrameMember::frameClass).orElse(FrameClass.UNKNOWN),
        frame.map(FrameMember::reason).orElse("its place in the frame is not known"),
        member.section().name(),
        q.weightOverPerimeter().stream().mapToObj(SectionFactor::ofWeightOverPerimeter).findFirst(),
        q.sectionFactor(),
        q.ledger().exposed(),
        flutes.bed(member.id(), q.covers()),
        q.fluteVolume(),
        q.fluteVoids().stream().map(FluteVoid::flange).reduce(Area.ZERO, Area::plus),
        q.length(),
        q.section().map(SectionMeasure::heated),
        q.section().map(SectionMeasure::cornerFactor),
        compactness && Compact.of(member),
        Coatings.of(member).isPresent(),
        RatingText.of(member.properties()));
  }

  private CoatedDeck deck(DeckLine line, Quantities q) {
    Deck deck = line.deck();
    return new CoatedDeck(
        deck.id(),
        deck.identity().guid(),
        label(deck.identity()),
        places.of(line),
        q.ledger().exposed(),
        FluteBeds.isFlat(deck, Optional.of(q)),
        roofs.carriesConcrete(deck),
        RatingText.of(deck.properties()));
  }

  private static String label(Identity identity) {
    return identity.mark().isEmpty() ? identity.name() : identity.mark();
  }
}
