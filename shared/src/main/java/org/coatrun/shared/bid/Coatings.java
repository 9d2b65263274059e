package org.coatrun.shared.bid;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.coatrun.shared.model.Material;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Properties;

/** Finds in a model whether steel comes to site primed, painted or galvanised. */
final class Coatings {

  // Names of properties that models use for it; the enumeration of the first is in IFC's
  // Pset_ElementComponentCommon.
  private static final List<String> PROPERTIES =
      List.of(
          "CorrosionTreatment",
          "CorrosionProtection",
          "SurfaceTreatment",
          "Surface Treatment",
          "Coating",
          "Finish",
          "Primer",
          "Paint");

  private static final Pattern COATED =
      Pattern.compile(
          "\\b(shop[ -]?)?(primed?|primer|painted|paint|epoxy ?coated|galvani[sz]ed|hdg)\\b");
  private static final Pattern BARE =
      Pattern.compile("\\b(no|non|not|without|un|none)\\b[ -]?|\\bun(primed|painted|coated)\\b");
  private static final List<String> YES = List.of("true", "yes", ".t.", "t", "1");

  private Coatings() {}

  /** The words by which a member is known to be coated; empty where nothing says so. */
  static Optional<String> of(Member member) {
    Stream<String> texts =
        Stream.concat(
            member.materials().stream().map(Material::name),
            Stream.of(member.identity().typeName()));
    return texts.filter(Coatings::isCoated).findFirst().or(() -> stated(member.properties()));
  }

  private static Optional<String> stated(Properties properties) {
    Map<String, String> values = properties.texts(PROPERTIES);
    return values.isEmpty()
        ? Optional.empty()
        : PROPERTIES.stream().flatMap(p -> stated(values, p).stream()).findFirst();
  }

  private static Optional<String> stated(Map<String, String> values, String property) {
    return Optional.ofNullable(values.get(property))
        .map(String::trim)
        .filter(
            v -> isCoated(v) || (YES.contains(v.toLowerCase(Locale.ROOT)) && isCoated(property)))
        .map(v -> property + " " + v);
  }

  private static boolean isCoated(String text) {
    String plain = text.toLowerCase(Locale.ROOT);
    return COATED.matcher(plain).find() && !BARE.matcher(plain).find();
  }
}
