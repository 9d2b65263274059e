package org.coatrun.shared.bid.amounts;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * One item of cost.
 *
 * @param key of its price in the job file, such as {@code prices.bag}
 * @param amount of the unit
 * @param price of one unit; zero where the job states none
 * @param cost amount x price, to a hundredth of the currency
 */
public record CostItem(
    String what, String key, double amount, String unit, double price, BigDecimal cost) {

  private static final int CENTS = 2;

  static CostItem of(String what, String key, double amount, String unit, double price) {
    return new CostItem(what, key, amount, unit, price, cents(amount * price));
  }

  /** Whether the item is needed and has no price. */
  public boolean unpriced() {
    return amount > 0 && price == 0;
  }

  static BigDecimal cents(double value) {
    return BigDecimal.valueOf(value).setScale(CENTS, RoundingMode.HALF_UP);
  }
}
