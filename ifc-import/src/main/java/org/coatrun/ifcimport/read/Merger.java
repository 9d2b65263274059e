package org.coatrun.ifcimport.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.coatrun.shared.finding.ModelFinding;
import org.coatrun.shared.model.Bulk;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Opening;
import org.coatrun.shared.model.Slab;
import org.coatrun.shared.model.Space;
import org.coatrun.shared.model.Stair;
import org.coatrun.shared.model.Storey;
import org.coatrun.shared.model.Wall;

/** Makes one building of several files: storeys once, elements with the same GlobalId once. */
final class Merger {

  private static final double SAME_HEIGHT = 0.01;

  private final List<SourceFile> files;
  private final List<FilePart> parts;
  private final Map<ElementId, ElementId> storeyFor = new HashMap<>();
  private final List<Storey> storeys = new ArrayList<>();
  private final Map<String, ElementId> firstOf = new HashMap<>();
  private final Map<ElementId, ElementId> sameAs = new HashMap<>();
  private final Set<ElementId> dropped = new HashSet<>();

  Merger(List<SourceFile> files, List<FilePart> parts) {
    this.files = files;
    this.parts = parts;
    parts.forEach(p -> p.storeys().forEach(this::addStorey));
    storeys.sort(Comparator.comparing(Storey::elevation).thenComparing(Storey::id));
    if (files.size() > 1) {
      parts.forEach(this::dropDoubles);
    }
  }

  private void addStorey(Storey storey) {
    for (Storey known : storeys) {
      if (known.id().file() != storey.id().file()
          && name(known).equals(name(storey))
          && Math.abs(known.elevation().metres() - storey.elevation().metres()) < SAME_HEIGHT) {
        storeyFor.put(storey.id(), known.id());
        return;
      }
    }
    storeys.add(storey);
  }

  private static String name(Storey storey) {
    return storey.name().trim().toLowerCase(Locale.ROOT);
  }

  private void dropDoubles(FilePart part) {
    part.members().forEach(this::dropDouble);
    part.decks().forEach(this::dropDouble);
    part.slabs().forEach(this::dropDouble);
    part.walls().forEach(this::dropDouble);
    part.bulks().forEach(this::dropDouble);
    part.stairs().forEach(this::dropDouble);
    part.spaces().forEach(this::dropDouble);
    part.openings().forEach(this::dropDouble);
  }

  private void dropDouble(Element element) {
    String guid = element.identity().guid();
    ElementId first = guid.isEmpty() ? null : firstOf.putIfAbsent(guid, element.id());
    if (first == null || first.file() == element.id().file()) {
      return;
    }
    dropped.add(element.id());
    sameAs.put(element.id(), first);
    files
        .get(element.id().file())
        .findings()
        .add(
            ModelFinding.SAME_ELEMENT_IN_FILES,
            element.id().step(),
            guid,
            "The same element is #"
                + first.step()
                + " of "
                + files.get(first.file()).model().file().fileName()
                + ".");
  }

  List<Storey> storeys() {
    return storeys;
  }

  List<Member> members() {
    return kept(
        FilePart::members,
        (m, i) ->
            new Member(
                i,
                m.role(),
                m.section(),
                m.classification(),
                m.materials(),
                m.properties(),
                m.body()));
  }

  List<Deck> decks() {
    return kept(
        FilePart::decks,
        (d, i) ->
            new Deck(i, d.form(), d.roof(), d.evidence(), d.materials(), d.properties(), d.body()));
  }

  List<Slab> slabs() {
    return kept(
        FilePart::slabs, (s, i) -> new Slab(i, s.kind(), s.materials(), s.properties(), s.body()));
  }

  List<Wall> walls() {
    return kept(
        FilePart::walls,
        (w, i) -> new Wall(i, w.classification(), w.materials(), w.properties(), w.body()));
  }

  List<Bulk> bulks() {
    return kept(FilePart::bulks, (b, i) -> new Bulk(i, b.classification(), b.body()));
  }

  List<Stair> stairs() {
    return kept(FilePart::stairs, (s, i) -> new Stair(i, s.body()));
  }

  List<Space> spaces() {
    return kept(FilePart::spaces, (s, i) -> new Space(i, s.longName(), s.properties(), s.body()));
  }

  List<Opening> openings() {
    return kept(
        FilePart::openings,
        (o, i) -> new Opening(i, sameAs.getOrDefault(o.host(), o.host()), o.fill(), o.body()));
  }

  private <T extends Element> List<T> kept(
      Function<FilePart, List<T>> of, BiFunction<T, Identity, T> with) {
    if (parts.size() == 1) {
      return of.apply(parts.get(0));
    }
    var all = new ArrayList<T>();
    for (FilePart part : parts) {
      for (T element : of.apply(part)) {
        if (!dropped.contains(element.id())) {
          Identity identity = element.identity();
          all.add(movesStorey(identity) ? with.apply(element, inStorey(identity)) : element);
        }
      }
    }
    return all;
  }

  private boolean movesStorey(Identity identity) {
    return identity.storey().map(storeyFor::containsKey).orElse(false);
  }

  private Identity inStorey(Identity i) {
    return new Identity(
        i.id(),
        i.guid(),
        i.sourceClass(),
        i.name(),
        i.mark(),
        i.typeName(),
        i.storey().map(s -> storeyFor.getOrDefault(s, s)),
        i.assembly());
  }
}
