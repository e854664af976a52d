package dev.faircarry.provision;

import dev.faircarry.trip.plan.Food.Mix;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Energy of food by what it is made of: the general Atwater factors, Merrill and Watt, USDA
 * Agriculture Handbook 74 (1973).
 */
public final class Atwater {
  private Atwater() {}

  public static final int KCAL_PER_GRAM_CARBOHYDRATE = 4;
  public static final int KCAL_PER_GRAM_PROTEIN = 4;
  public static final int KCAL_PER_GRAM_FAT = 9;

  /** Energy of so many grams of each, in kilocalories, exact. */
  public static BigDecimal kcal(
      BigDecimal carbohydrateGrams, BigDecimal proteinGrams, BigDecimal fatGrams) {
    return carbohydrateGrams
        .multiply(BigDecimal.valueOf(KCAL_PER_GRAM_CARBOHYDRATE))
        .add(proteinGrams.multiply(BigDecimal.valueOf(KCAL_PER_GRAM_PROTEIN)))
        .add(fatGrams.multiply(BigDecimal.valueOf(KCAL_PER_GRAM_FAT)));
  }

  /** Energy density of a mixture in kcal per gram, to four decimals, rounded half up. */
  public static BigDecimal kcalPerGram(Mix mix) {
    return kcal(grams(mix.carbohydrate()), grams(mix.protein()), grams(mix.fat()))
        .divide(grams(mix.per()), 4, RoundingMode.HALF_UP);
  }

  /**
   * Energy density in kcal per gram from kcal per ounce (1 oz = 28.349523125 g), to four decimals,
   * half up.
   */
  public static BigDecimal kcalPerGramFromOunce(BigDecimal kcalPerOunce) {
    return kcalPerOunce.divide(new BigDecimal("28.349523125"), 4, RoundingMode.HALF_UP);
  }

  private static BigDecimal grams(dev.faircarry.unit.Mass mass) {
    return BigDecimal.valueOf(mass.milligrams(), 3);
  }
}
