package org.coatrun.testmodels.scenario;

/**
 * How big a tower is.
 *
 * @param storeys number of floors above the ground
 * @param baysX bays along x
 * @param baysY bays along y
 * @param detail plates at each end of each beam
 */
public record TowerSize(int storeys, int baysX, int baysY, int detail) {
  private static final double BYTES_PER_BAY = 122_000;

  /** Forty storeys of some 3,000 m2 with all connections. */
  public static final TowerSize FULL = new TowerSize(40, 9, 6, 2);

  /** Few plates: for routing, where the floors matter and the connections do not. */
  public static TowerSize plain(int storeys) {
    return new TowerSize(storeys, 8, 6, 0);
  }

  /**
   * The tower whose file has about this size.
   *
   * @throws IllegalArgumentException if the size is not between 0.5 and 20,000 megabytes
   */
  public static TowerSize ofMegabytes(double megabytes) {
    if (!(megabytes >= 0.5 && megabytes <= 20_000)) {
      throw new IllegalArgumentException("A tower can have 0.5 to 20000 megabytes.");
    }
    double bays = megabytes * 1e6 / BYTES_PER_BAY;
    int storeys = (int) Math.max(2, Math.round(40 * Math.min(1, Math.sqrt(bays / 1920))));
    double perFloor = Math.max(2, bays / storeys);
    int baysY = (int) Math.max(1, Math.round(Math.sqrt(perFloor * 6 / 8)));
    int baysX = (int) Math.max(2, Math.round(perFloor / baysY));
    return new TowerSize(storeys, baysX, baysY, FULL.detail);
  }
}
