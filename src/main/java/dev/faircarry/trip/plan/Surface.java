package dev.faircarry.trip.plan;

import java.util.Locale;

/**
 * What is walked on, with the terrain factor of Soule and Goldman (1972), J. Appl. Physiol.
 * 32(5):706-708 (the table is from memory).
 */
public enum Surface {
  HARD_ROAD(1000),
  DIRT_ROAD(1100),
  LIGHT_BRUSH(1200),
  HEAVY_BRUSH(1500),
  BOG(1800),
  LOOSE_SAND(2100);

  private final int factorThousandths;

  Surface(int factorThousandths) {
    this.factorThousandths = factorThousandths;
  }

  /** Terrain factor in thousandths: how many times the cost of walking on a hard road. */
  public int factorThousandths() {
    return factorThousandths;
  }

  /** The surface as it stands in documents: {@code dirt-road}. */
  public String text() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
