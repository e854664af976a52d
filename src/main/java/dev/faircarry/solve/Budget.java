package dev.faircarry.solve;

/**
 * How many units may change hands.
 *
 * @param gains most units that hikers may have more of than before, first assignments included
 * @param drops most units that hikers still there may have fewer of than before
 */
record Budget(Moves moves, int gains, int drops) {

  /**
   * For so many handovers in all: what is gained and not fresh is handed over, and what is not
   * gained is dropped or gone.
   */
  static Budget of(Moves moves, int handovers) {
    int gains = handovers + moves.fresh;
    return new Budget(moves, gains, gains + moves.released);
  }
}
