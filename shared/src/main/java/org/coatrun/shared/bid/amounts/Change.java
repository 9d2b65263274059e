package org.coatrun.shared.bid.amounts;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.job.Alternate;
import org.coatrun.shared.job.Construction;
import org.coatrun.shared.job.DeckWork;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.job.MaterialSpec;
import org.coatrun.shared.job.RatingRule;
import org.coatrun.shared.job.ThicknessChoice;

/** Makes the job that an alternate describes; what it leaves out stays as in the job. */
public final class Change {

  private Change() {}

  /** The other job. It has no alternates of its own. */
  public static Job of(Job job, Alternate other) {
    List<RatingRule> ratings = new ArrayList<>(job.ratings());
    ratings.addAll(other.ratings());
    return new Job(
        job.project(),
        job.units(),
        building(job.building(), other),
        ratings,
        job.substances(),
        job.exposure(),
        deck(job.deck(), other),
        job.listings(),
        thickness(job.thickness(), other),
        material(job.material(), other),
        job.machine(),
        job.labour(),
        job.prices(),
        List.of(),
        job.programme(),
        job.cold(),
        job.inspection(),
        job.line(),
        job.water(),
        job.power(),
        job.air(),
        job.site());
  }

  private static Construction building(Construction b, Alternate other) {
    return new Construction(
        other.type().or(b::type), b.occupancy(), b.roofRelief(), b.highestFloor(), b.height());
  }

  private static DeckWork deck(DeckWork d, Alternate other) {
    return new DeckWork(
        other.sprayDeck().orElse(d.spray()),
        d.fillFlutes(),
        d.hours(),
        d.thickness(),
        d.depth(),
        d.pitch(),
        d.topOpening(),
        d.bottomWidth(),
        d.galvanised(),
        d.cellular(),
        d.concreteOnRoofDeck());
  }

  private static ThicknessChoice thickness(ThicknessChoice t, Alternate other) {
    return new ThicknessChoice(
        other.restrained().orElse(t.restrained()),
        other.listing().or(t::listing),
        t.criticalTemperature(),
        t.withoutFactor());
  }

  private static MaterialSpec material(MaterialSpec m, Alternate other) {
    return new MaterialSpec(
        m.bag(),
        other.density().orElse(m.density()),
        m.waste(),
        m.order(),
        m.waterRatio(),
        m.bagsPerPallet(),
        m.palletArea(),
        m.palletsHigh(),
        m.truckload(),
        m.shelfLife(),
        m.bondingCoverage());
  }
}
