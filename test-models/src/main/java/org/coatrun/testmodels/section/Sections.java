package org.coatrun.testmodels.section;

/**
 * The rolled sections that the sample buildings use.
 *
 * <p>Dimensions in inches from the AISC Shapes Database, version 15.0 (d, bf, tw, tf, kdes; the
 * fillet is kdes less tf; hollow sections with their design wall, corners of twice that wall).
 */
public final class Sections {
  private static final double INCH = 0.0254;

  public static final IShape W8X18 = w("W8X18", 8.14, 5.25, 0.23, 0.33, 0.63);
  public static final IShape W10X49 = w("W10X49", 10.0, 10.0, 0.34, 0.56, 1.06);
  public static final IShape W12X14 = w("W12X14", 11.9, 3.97, 0.2, 0.225, 0.525);
  public static final IShape W12X26 = w("W12X26", 12.2, 6.49, 0.23, 0.38, 0.68);
  public static final IShape W12X58 = w("W12X58", 12.2, 10.0, 0.36, 0.64, 1.24);
  public static final IShape W12X65 = w("W12X65", 12.1, 12.0, 0.39, 0.605, 1.2);
  public static final IShape W12X87 = w("W12X87", 12.5, 12.1, 0.515, 0.81, 1.41);
  public static final IShape W14X22 = w("W14X22", 13.7, 5.0, 0.23, 0.335, 0.735);
  public static final IShape W14X120 = w("W14X120", 14.5, 14.7, 0.59, 0.94, 1.54);
  public static final IShape W14X233 = w("W14X233", 16.0, 15.9, 1.07, 1.72, 2.32);
  public static final IShape W16X26 = w("W16X26", 15.7, 5.5, 0.25, 0.345, 0.747);
  public static final IShape W18X35 = w("W18X35", 17.7, 6.0, 0.3, 0.425, 0.827);
  public static final IShape W21X44 = w("W21X44", 20.7, 6.5, 0.35, 0.45, 0.95);
  public static final IShape W24X55 = w("W24X55", 23.6, 7.01, 0.395, 0.505, 1.01);
  public static final IShape W24X76 = w("W24X76", 23.9, 8.99, 0.44, 0.68, 1.18);
  public static final RectangularHollow HSS6X6X3_8 = hss("HSS6X6X3/8", 6, 6, 0.349);
  public static final RectangularHollow HSS6X6X1_4 = hss("HSS6X6X1/4", 6, 6, 0.233);
  public static final RectangularHollow HSS8X8X1_2 = hss("HSS8X8X1/2", 8, 8, 0.465);
  public static final RoundHollow HSS8_625 =
      new RoundHollow("HSS8.625X0.322", 8.625 * INCH, 0.3 * INCH);
  public static final Angle L2X2X1_4 = angle("L2X2X1/4", 2, 0.25, 0.5);
  public static final Angle L3X3X1_4 = angle("L3X3X1/4", 3, 0.25, 0.625);
  public static final Angle L4X4X3_8 = angle("L4X4X3/8", 4, 0.375, 0.75);
  public static final DoubleAngle TWO_L2X2X1_4 =
      new DoubleAngle("2L2X2X1/4", L2X2X1_4, 0.75 * INCH);
  public static final DoubleAngle TWO_L4X4X3_8 =
      new DoubleAngle("2L4X4X3/8X1/2", L4X4X3_8, 0.5 * INCH);

  private Sections() {}

  private static IShape w(String name, double d, double bf, double tw, double tf, double kdes) {
    return new IShape(name, d * INCH, bf * INCH, tw * INCH, tf * INCH, (kdes - tf) * INCH);
  }

  private static RectangularHollow hss(String name, double h, double b, double wall) {
    return new RectangularHollow(name, h * INCH, b * INCH, wall * INCH, 2 * wall * INCH);
  }

  private static Angle angle(String name, double leg, double t, double k) {
    return new Angle(name, leg * INCH, leg * INCH, t * INCH, (k - t) * INCH);
  }
}
