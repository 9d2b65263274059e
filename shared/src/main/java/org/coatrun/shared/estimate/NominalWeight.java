package org.coatrun.shared.estimate;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coatrun.shared.units.LinearDensity;

/**
 * The weight per length that a section's designation states.
 *
 * <p>Read are: the American rolled shapes W, M, S, HP, C, MC and the tees cut from them (nominal
 * depth by weight: in inches and lb/ft, AISC Manual part 1; the same letters with millimetres and
 * kg/m, ASTM A6M), the British serial sizes (depth by width by kg/m, BS 4-1) and the Australian
 * ones (depth, kind, kg/m, AS/NZS 3679.1). Hollow sections, angles and the European I and H
 * sections state no weight.
 */
public final class NominalWeight {

  private static final String NUMBER = "(\\d+(?:\\.\\d+)?)";
  private static final String BY = "\\s*[X*\\u00d7]\\s*";
  private static final String START = "(?<![A-Z0-9.])";
  private static final String END = "(?![0-9A-Z.,/*\\u00d7]|\\s*[X*\\u00d7]\\s*\\d)";

  private static final Pattern AMERICAN =
      Pattern.compile(START + "(WT|MT|ST|HP|MC|W|M|S|C)\\s*" + NUMBER + BY + NUMBER + END);

  private static final String BRITISH_KIND = "(?:UKBP|UKPFC|UKB|UKC|UBP|UB|UC|PFC)";
  private static final List<Pattern> KILOGRAMS_PER_METRE =
      List.of(
          Pattern.compile(START + BRITISH_KIND + "\\s*" + NUMBER + BY + NUMBER + BY + NUMBER + END),
          Pattern.compile(
              START + NUMBER + BY + NUMBER + BY + NUMBER + "\\s*" + BRITISH_KIND + "(?![A-Z0-9])"),
          Pattern.compile(START + NUMBER + "\\s*(?:UB|UC|UBP|WB|WC|TFB)\\s*" + NUMBER + END));

  // The deepest W shape is 44 in and the least metric one 100 mm; of the rest 24 in and 37.5 mm.
  private static final double LEAST_METRIC_W_DEPTH = 50;
  private static final double LEAST_METRIC_DEPTH = 25;

  private NominalWeight() {}

  /** The weight that {@code designation} states; empty where it states none. */
  public static Optional<LinearDensity> of(String designation) {
    String name = designation.toUpperCase(Locale.ROOT);
    Matcher american = AMERICAN.matcher(name);
    if (american.find()) {
      return positive(american(american));
    }
    for (Pattern pattern : KILOGRAMS_PER_METRE) {
      Matcher matcher = pattern.matcher(name);
      if (matcher.find()) {
        String last = matcher.group(matcher.groupCount());
        return positive(LinearDensity.ofKilogramsPerMetre(Double.parseDouble(last)));
      }
    }
    return Optional.empty();
  }

  private static LinearDensity american(Matcher matcher) {
    double depth = Double.parseDouble(matcher.group(2));
    double weight = Double.parseDouble(matcher.group(3));
    double leastMetric = matcher.group(1).equals("W") ? LEAST_METRIC_W_DEPTH : LEAST_METRIC_DEPTH;
    return depth < leastMetric
        ? LinearDensity.ofPoundsPerFoot(weight)
        : LinearDensity.ofKilogramsPerMetre(weight);
  }

  private static Optional<LinearDensity> positive(LinearDensity weight) {
    return weight.kilogramsPerMetre() > 0 ? Optional.of(weight) : Optional.empty();
  }
}
