package dev.faircarry.oracle;

/**
 * What a larger random trip is like.
 *
 * @param pieces whole items, parts and units together
 * @param ruled whether there are rules, rooms, containers and limits on pieces
 */
public record Family(
    int hikers, int pieces, int days, int grain, Hardness hardness, boolean ruled) {

  /** How hard it is to even out. */
  public enum Hardness {
    /** Light pieces of all sizes on kits alike. */
    EASY,
    /**
     * No small pieces, and as much own kit as brings the expected number of perfect splits near
     * one, where the size allows that: n log2 m = (m - 1) log2(R), R being the spread of a hiker's
     * sum in steps. That is the phase transition of number partitioning (Mertens 1998 for two
     * parts; for m parts from memory).
     */
    HARD,
    /** Light and heavy pieces, uneven kits. */
    MIXED,
    /**
     * As mixed, the shared pieces rounded to a tenth of a kilogram as labels and lists often give
     * them: what a hiker can hold is a grid of a few sums, and the sheer total is out of reach.
     */
    ROUNDED
  }

  public static Family plain(int hikers, int pieces, int grain, Hardness hardness) {
    return new Family(hikers, pieces, 1, grain, hardness, false);
  }

  public Family withRules() {
    return new Family(hikers, pieces, days, grain, hardness, true);
  }

  public Family overDays(int number) {
    return new Family(hikers, pieces, number, grain, hardness, ruled);
  }

  /** What part of all loads the shared pieces are, in percent. */
  int sharedPercent() {
    return switch (hardness) {
      case EASY -> 35;
      case MIXED, ROUNDED -> 45;
      case HARD -> hardPercent();
    };
  }

  private int hardPercent() {
    double bits = pieces * Math.log(hikers) / Math.log(2) / Math.max(1, hikers - 1);
    double spread = Math.sqrt(pieces / (double) hikers);
    double stepsWithoutKit = 1000.0 * hikers / (grain * (double) pieces);
    double percent = 100 * Math.pow(2, bits) / (spread * stepsWithoutKit);
    return (int) Math.max(15, Math.min(85, percent));
  }

  @Override
  public String toString() {
    return hikers
        + "x"
        + pieces
        + (days > 1 ? "x" + days + "d" : "")
        + " grain "
        + grain
        + " "
        + hardness.name().toLowerCase(java.util.Locale.ROOT)
        + (ruled ? " ruled" : "");
  }
}
