package org.coatrun.shared.bid;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.coatrun.shared.frame.FrameClass;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.job.RatingRule;
import org.coatrun.shared.rules.ConstructionType;
import org.coatrun.shared.rules.FrameFacts;
import org.coatrun.shared.rules.Numbers;
import org.coatrun.shared.rules.Occupancy;
import org.coatrun.shared.rules.Table601;
import org.coatrun.shared.units.FireDuration;

/**
 * Decides hours by Table 601 and the job's rules. Of several rules that match, the last one that
 * states a thing wins for that thing.
 */
public final class Rulings {

  private final Job job;

  /** Decisions by a job. */
  public Rulings(Job job) {
    this.job = job;
  }

  /** What is decided for a member or deck. */
  public Ruling of(Coated item) {
    List<Integer> matching =
        IntStream.range(0, job.ratings().size())
            .filter(i -> RuleMatch.matches(job.ratings().get(i), item))
            .boxed()
            .toList();
    Optional<Integer> byRule = last(matching, r -> r.hours().isPresent());
    Table601.Rating table = table(item);
    return new Ruling(
        byRule.map(i -> job.ratings().get(i).hours()).orElse(deckHours(item).or(table::hours)),
        byRule.map(this::label).orElse(deckHours(item).isPresent() ? "deck.hours" : row(table)),
        byRule.map(this::reason).or(() -> deckReason(item)).orElse(table.reason()),
        bare(item, last(matching, r -> r.coat().isPresent())),
        last(matching, r -> r.restrained().isPresent())
            .map(i -> job.ratings().get(i).restrained().orElseThrow())
            .orElse(job.thickness().restrained()),
        last(matching, r -> r.listing().isPresent())
            .map(i -> job.ratings().get(i).listing().orElseThrow())
            .or(job.thickness()::listing),
        last(matching, r -> r.thickness().isPresent())
            .map(this::thickness)
            .or(() -> deckThickness(item)));
  }

  /** Rules of the job that match none of the items, from the first. */
  public List<String> unused(List<? extends Coated> items) {
    return IntStream.range(0, job.ratings().size())
        .filter(i -> items.stream().noneMatch(c -> RuleMatch.matches(job.ratings().get(i), c)))
        .mapToObj(this::label)
        .toList();
  }

  private Optional<FireDuration> deckHours(Coated item) {
    return item instanceof CoatedDeck ? job.deck().hours() : Optional.empty();
  }

  private Optional<String> deckReason(Coated item) {
    return deckHours(item)
        .map(h -> "deck.hours of the job file: " + Numbers.plain(h.hours()) + " h");
  }

  /** What leaves an element bare: the last rule that speaks of it, else deck.spray for decks. */
  private Optional<String> bare(Coated item, Optional<Integer> rule) {
    if (rule.isPresent()) {
      boolean coat = job.ratings().get(rule.get()).coat().orElseThrow();
      return coat ? Optional.empty() : rule.map(this::named);
    }
    return item instanceof CoatedMember || job.deck().spray()
        ? Optional.empty()
        : Optional.of("deck.spray, which is no");
  }

  private StatedThickness thickness(int i) {
    return new StatedThickness(job.ratings().get(i).thickness().orElseThrow(), named(i));
  }

  private String named(int i) {
    RatingRule rule = job.ratings().get(i);
    return number(i)
        + rule.label().map(l -> " \"" + l + "\"").orElse("")
        + rule.reason().map(r -> ": " + r).orElse("");
  }

  private Optional<StatedThickness> deckThickness(Coated item) {
    return item instanceof CoatedDeck
        ? job.deck().thickness().map(t -> new StatedThickness(t, "deck.thickness of the job file"))
        : Optional.empty();
  }

  private Optional<Integer> last(List<Integer> matching, Function<RatingRule, Boolean> states) {
    return matching.stream()
        .filter(i -> states.apply(job.ratings().get(i)))
        .reduce((earlier, later) -> later);
  }

  private String label(int i) {
    return job.ratings().get(i).label().orElse("rule " + (i + 1));
  }

  private String reason(int i) {
    RatingRule rule = job.ratings().get(i);
    String hours = Numbers.plain(rule.hours().orElseThrow().hours()) + " h";
    return number(i) + ": " + hours + rule.reason().map(r -> ", " + r).orElse("");
  }

  private static String number(int i) {
    return "rule " + (i + 1) + " of the job file";
  }

  private static String row(Table601.Rating rating) {
    String reason = rating.reason();
    int colon = reason.indexOf(':');
    String row = colon < 0 ? reason : reason.substring(0, colon);
    return reason.contains("by footnote a") ? row + ", footnote a" : row;
  }

  private Table601.Rating table(Coated item) {
    ConstructionType type = job.building().type().orElse(ConstructionType.IA);
    boolean relief = job.building().roofRelief();
    // Without a stated group the rule for high roofs is not used: group M keeps the rating.
    Occupancy group = relief ? job.building().occupancy().orElse(Occupancy.M) : Occupancy.M;
    FrameFacts facts =
        new FrameFacts(
            item instanceof CoatedMember m ? m.frameClass() : FrameClass.SECONDARY,
            item.place().roof(),
            relief && item.place().supportsOnlyRoof(),
            item.place().underRoof());
    return Table601.of(type, group, facts);
  }
}
