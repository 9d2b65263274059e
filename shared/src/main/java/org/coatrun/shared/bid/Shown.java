package org.coatrun.shared.bid;

import java.util.Locale;
import org.coatrun.shared.listing.FactorForm;
import org.coatrun.shared.listing.Listing;
import org.coatrun.shared.rules.Numbers;
import org.coatrun.shared.rules.Rounding;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.SectionFactor;

/** Numbers of a reason, in the units of the listing. */
final class Shown {

  private Shown() {}

  /** A thickness of a listing: inches with fractions, or millimetres where it rounds to those. */
  static String thickness(Length t, Listing listing) {
    return listing.rounding() == Rounding.MILLIMETRE
        ? Numbers.plain(t.millimetres()) + " mm"
        : Numbers.inches(t.inches()) + " in";
  }

  /** A thickness before rounding, with four decimals of an inch or two of a millimetre. */
  static String exact(Length t, Listing listing) {
    return listing.rounding() == Rounding.MILLIMETRE
        ? String.format(Locale.ROOT, "%.2f mm", t.millimetres())
        : String.format(Locale.ROOT, "%.4f in", t.inches());
  }

  static String hours(FireDuration hours) {
    return Numbers.plain(hours.hours()) + " h";
  }

  /** The section factor in a form, as a number. */
  static double factor(SectionFactor factor, FactorForm form) {
    return switch (form) {
      case W_D -> factor.weightOverPerimeter();
      case A_P -> factor.areaOverPerimeterInches();
      case HP_A -> factor.perMetre();
    };
  }

  /** The section factor in a form: {@code W/D 0.797}, {@code Hp/A 168.1 1/m}. */
  static String factor(double value, FactorForm form) {
    return form == FactorForm.HP_A
        ? String.format(Locale.ROOT, "Hp/A %.1f 1/m", value)
        : String.format(Locale.ROOT, "%s %.3f", form, value);
  }
}
