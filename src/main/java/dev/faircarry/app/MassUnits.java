package dev.faircarry.app;

import dev.faircarry.unit.MassText;
import java.util.Locale;

/** Units in which people read loads. */
public enum MassUnits {
  METRIC {
    @Override
    public String text(long milligrams) {
      return MassText.kilograms(milligrams);
    }

    @Override
    public String small(long milligrams) {
      return MassText.grams(milligrams);
    }
  },
  US {
    @Override
    public String text(long milligrams) {
      return MassText.poundsAndOunces(milligrams);
    }

    @Override
    public String small(long milligrams) {
      return MassText.poundsAndOunces(milligrams);
    }
  };

  private static final long NANOGRAMS_PER_MILLIGRAM = 1_000_000L;

  /** A mass, rounded for reading. */
  public abstract String text(long milligrams);

  /** A mass as finely as a scale shows it. */
  public abstract String small(long milligrams);

  /** A mass in nanograms, rounded for reading. */
  public String textOfNanograms(long nanograms) {
    return text((nanograms + NANOGRAMS_PER_MILLIGRAM / 2) / NANOGRAMS_PER_MILLIGRAM);
  }

  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
