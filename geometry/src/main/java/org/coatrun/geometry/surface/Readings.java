package org.coatrun.geometry.surface;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.coatrun.geometry.deck.FluteVoids;
import org.coatrun.geometry.exposure.Covering;
import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.exposure.Form;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.geometry.section.CoatFactors;
import org.coatrun.geometry.section.Sections;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.view.Drawing;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;
import org.locationtech.jts.geom.TopologyException;

/**
 * Measures forms in their settings, each setting once: the floors of a tower, and the bays of a
 * floor, mostly repeat each other. May be asked by several threads.
 */
final class Readings {

  private final SurfaceOptions options;
  private final FluteVoids flutes = new FluteVoids();
  private final CoatFactors coats = new CoatFactors();
  private final Map<Setting, Reading> known = new ConcurrentHashMap<>();

  Readings(SurfaceOptions options) {
    this.options = options;
  }

  Reading of(Things.Result.Made made, List<Thing> near, Kernel kernel) {
    Setting setting = Setting.of(made.thing(), near);
    Reading reading = known.get(setting);
    if (reading == null) {
      reading = measured(made.element(), made.formed(), setting, kernel);
      known.put(setting, reading);
    }
    return reading;
  }

  /** Where its faces cannot be cut for a picture there is none: what was measured stands. */
  private static Optional<Drawing> drawing(Exposure exposure) {
    try {
      return Optional.of(Drawing.of(exposure));
    } catch (IllegalArgumentException
        | IllegalStateException
        | ArithmeticException
        | TopologyException e) {
      return Optional.empty();
    }
  }

  private Reading measured(Element element, Formed.Made formed, Setting setting, Kernel kernel) {
    try {
      List<Thing> near = setting.near();
      Form form = formed.form();
      Exposure exposure = new Covering(options.exposure(), kernel).of(form, near);
      return new Reading.Measured(
          Length.ofMetres(formed.length()),
          Volume.ofCubicMetres(formed.volume()),
          exposure.ledger(),
          element instanceof Member
              ? Sections.of(exposure, formed.run(), coats, kernel)
              : Optional.empty(),
          exposure.covers(),
          flutes.of(exposure, near, kernel),
          element instanceof Deck ? Optional.of(flutes.measure(form)) : Optional.empty(),
          options.meshes().flatMap(sink -> drawing(exposure)));
    } catch (IllegalArgumentException | ArithmeticException | TopologyException e) {
      return new Reading.Failed(
          SurfaceFinding.NOT_MEASURED,
          "body",
          "Its surface could not be worked out: " + e.getMessage() + ".");
    }
  }
}
