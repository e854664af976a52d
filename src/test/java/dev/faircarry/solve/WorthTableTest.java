package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Tables of worth against trying everything. */
class WorthTableTest {
  private record Case(long[] uses, long[] worths, int[] numbers, long limit) {
    static Case of(SplittableRandom random, long limit, long measure) {
      int lots = random.nextInt(7);
      long[] uses = new long[lots];
      long[] worths = new long[lots];
      int[] numbers = new int[lots];
      for (int k = 0; k < lots; k++) {
        // Some use nothing, some more than there is.
        long most = 1 + limit / measure / random.nextInt(1, 6);
        uses[k] = random.nextInt(6) == 0 ? 0 : random.nextLong(most + 2) * measure;
        worths[k] = random.nextLong(-5, 100);
        numbers[k] = random.nextInt(4);
      }
      return new Case(uses, worths, numbers, limit);
    }

    WorthTable table() {
      return new WorthTable(uses, worths, numbers, limit);
    }

    int blocks() {
      int sum = 0;
      for (int number : numbers) {
        sum += number;
      }
      return sum;
    }

    /** The most that lots from one on are worth within so much. */
    long best(int at, long left) {
      if (at == uses.length) {
        return 0;
      }
      long best = 0;
      for (int n = 0; n <= numbers[at] && n * uses[at] <= left; n++) {
        best = Math.max(best, n * worths[at] + best(at + 1, left - n * uses[at]));
      }
      return best;
    }
  }

  /** Up to 4096 units there is a column of the table for each, so nothing is rounded. */
  @Test
  void exactWhereEachUnitCounts() {
    for (long seed = 0; seed < 400; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      long limit = random.nextInt(4) == 0 ? random.nextInt(5) : random.nextInt(4097);
      Case lots = Case.of(random, limit, 1);
      checkExact(lots, random, "seed " + seed);
    }
  }

  /** Likewise where all uses are whole numbers of some measure. */
  @Test
  void exactInMeasures() {
    for (long seed = 0; seed < 400; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      long measure = random.nextLong(1, 1_000_000);
      long limit = random.nextLong(measure * 4096 + 1);
      checkExact(Case.of(random, limit, measure), random, "seed " + seed);
    }
  }

  private static void checkExact(Case lots, SplittableRandom random, String where) {
    WorthTable table = lots.table();
    for (int at = 0; at <= lots.uses().length; at++) {
      for (int turn = 0; turn < 4; turn++) {
        long left = turn == 0 ? lots.limit() : random.nextLong(lots.limit() + 1);
        assertEquals(lots.best(at, left), table.from(at, left), where + " " + at + " " + left);
      }
    }
  }

  /** Each block is rounded by less than a unit, which is a 4096th of the limit. */
  @Test
  void roundedItIsNeverTooLowAndLittleTooHigh() {
    int above = 0;
    for (long seed = 0; seed < 400; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Case lots = Case.of(random, random.nextLong(5000, 20_000_000_000L), 1);
      WorthTable table = lots.table();
      long unit = lots.limit() / 4096 + 1;
      for (int at = 0; at <= lots.uses().length; at++) {
        for (int turn = 0; turn < 6; turn++) {
          long left = turn == 0 ? lots.limit() : random.nextLong(lots.limit() + 1);
          String where = "seed " + seed + " " + at + " " + left;
          long said = table.from(at, left);
          long best = lots.best(at, left);
          assertTrue(said >= best, where);
          assertTrue(said <= lots.best(at, left + lots.blocks() * unit), where);
          above += said > best ? 1 : 0;
        }
      }
      assertTrue(table.cells() >= lots.uses().length, "seed " + seed);
    }
    assertTrue(above > 0, "nothing was rounded");
  }
}
