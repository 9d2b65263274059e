package org.coatrun.testmodels.erect;

import org.coatrun.testmodels.section.IShape;

/**
 * A notch in the top of a beam's end, so that it fits under the flange of what it frames into.
 *
 * @param length along the beam, 0 for no cope
 * @param depth from the top, deeper than flange and fillet
 */
public record Cope(double length, double depth) {
  public static final Cope NONE = new Cope(0, 0);

  /** Tells whether anything is cut. */
  public boolean isCut() {
    return length > 0;
  }

  /** Returns by how much the cope changes the beam's surface, in square metres. */
  double areaChange(IShape beam) {
    double arcs = Math.PI * beam.fillet();
    double flats = beam.width() - beam.web() - 2 * beam.fillet();
    double webs = 2 * (depth - beam.flange() - beam.fillet());
    double outline = beam.width() + 2 * beam.flange() + flats + arcs + webs;
    return isCut() ? length * (beam.web() - outline) : 0;
  }

  /** Returns the volume that the cope removes, in cubic metres. */
  double volume(IShape beam) {
    double fillets = (2 - Math.PI / 2) * beam.fillet() * beam.fillet();
    double web = (depth - beam.flange()) * beam.web();
    return length * (beam.width() * beam.flange() + web + fillets);
  }
}
