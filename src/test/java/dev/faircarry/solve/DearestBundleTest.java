package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.fixture.Trips;
import dev.faircarry.oracle.Family;
import dev.faircarry.oracle.FamilyTrips;
import dev.faircarry.oracle.Feature;
import dev.faircarry.oracle.TripGenerator;
import dev.faircarry.trip.Trip;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The dearest bundle against trying all bundles of small trips. */
class DearestBundleTest {
  private static final long NOTHING = Long.MIN_VALUE;
  private static final int MOST_BUNDLES = 20_000;

  private int tried;
  private int settled;
  private int nothing;
  private int longer;
  private int withFines;

  @Test
  void smallTripsOfEveryKind() {
    TripGenerator.Shape shape = TripGenerator.Shape.of(4, 3, 9).without(Feature.LEAVERS);
    for (long seed = 0; seed < 500; seed++) {
      check(TripGenerator.trip(seed, shape), seed, new Prices(200, 40));
    }
    assertTrue(tried > 1000 && settled == 0 && nothing > 50, toString());
  }

  /** Light and heavy pieces over days, with rooms, canisters and limits on pieces. */
  @Test
  void moreThingsOverDays() {
    Family family = new Family(3, 13, 3, 5, Family.Hardness.MIXED, true);
    for (long seed = 0; seed < 12; seed++) {
      check(FamilyTrips.trip(seed, family), seed, new Prices(5, 2));
    }
    assertTrue(tried > 20 && settled * 4 < tried && withFines * 3 > tried, toString());
  }

  /**
   * As dear as heavy, in a pack that is as full as the wish is high: many bundles are worth nearly
   * the same, which takes a table to tell.
   */
  @Test
  void nearlyTheSameWorth() {
    for (long seed = 0; seed < 24; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Trips trips = Trips.days(2).grain(1).hiker("a", h -> h.target(9000).pack(0, 4200));
      trips.hiker("b", h -> h.target(9000));
      for (int k = 0; k < 13; k++) {
        long grams = random.nextInt(400, 900);
        long volume = random.nextInt(400, 900);
        trips.item(
            "p" + k,
            s -> (random.nextInt(3) == 0 ? s.evenly(grams / 2) : s).mass(grams).volume(volume));
      }
      Model m = ModelBuilder.of(trips.trip());
      int half = m.step(0, 0, m.leastTotal[0] / 2);
      Wish wish = Wish.overall(2, new int[] {half, half - 30, half - 60, half - 90}, 0);
      check(new Question(new Lots(m, wish), 0, random, new Prices(100, 1)), "seed " + seed);
    }
    assertTrue(tried == 24 && longer > 12, toString());
  }

  @Override
  public String toString() {
    return tried
        + " tried, "
        + settled
        + " settled, "
        + nothing
        + " without any, "
        + longer
        + " long, "
        + withFines
        + " fined";
  }

  private void check(Trip trip, long seed, Prices prices) {
    Model m = ModelBuilder.of(trip);
    if (m.contradictory) {
      // What must be kept together and apart at once is seen to before any search.
      return;
    }
    SplittableRandom random = new SplittableRandom(seed);
    for (int hiker = 0; hiker < m.hikers; hiker++) {
      Lots lots = new Lots(m, wish(m, random));
      Question question = new Question(lots, hiker, random, prices);
      if (question.bundles() <= MOST_BUNDLES) {
        check(question, "seed " + seed + " hiker " + hiker);
      }
    }
  }

  /** Steps from those of own kit alone up to those of half of everything with each. */
  private static Wish wish(Model m, SplittableRandom random) {
    int[] list = new int[m.mornings()];
    for (int k = 0; k < list.length; k++) {
      int hiker = random.nextInt(m.hikers);
      int day = random.nextInt(m.days);
      long shared = m.leastTotal[day] / random.nextInt(2, 8);
      list[k] = m.step(hiker, day, shared);
    }
    // Few values, as lists have them after some turns of a search.
    for (int k = 1; k < list.length; k++) {
      list[k] = random.nextInt(3) == 0 ? list[k] : list[k - 1];
    }
    long excess = random.nextInt(2) == 0 ? 0 : 100;
    return Wish.overall(m.days, Steps.sortDescending(list), excess);
  }

  /** What prices are like. */
  private record Prices(int ofKilogram, int atMostMore) {}

  /** What is asked of one hiker. */
  private static final class Question {
    final Lots lots;
    final PlainBundle plain;
    final boolean withinCap;
    final int[] fewest;
    final int[] most;

    /** Bounds of the question, without what limits leave room for. */
    final int[] asked;

    final long[] prices;
    final long[] fines;
    final long above;
    final DearestBundle search;

    Question(Lots lots, int hiker, SplittableRandom random, Prices like) {
      this.lots = lots;
      plain = new PlainBundle(lots, hiker);
      withinCap = random.nextBoolean();
      int size = lots.lots.size();
      fewest = new int[size];
      most = new int[size];
      search = new DearestBundle(lots, hiker, fewest, most, withinCap ? 0 : 1);
      prices = new long[size];
      asked = new int[size];
      boolean bounded = random.nextInt(3) == 0;
      for (int c = 0; c < size; c++) {
        // About as dear as it is heavy, as prices come out to be.
        long byMass = lots.sample(c).peakMass() * like.ofKilogram() / 1_000_000;
        prices[c] = random.nextInt(6) == 0 ? 0 : byMass + random.nextInt(1 + like.atMostMore());
        asked[c] = lots.size(c);
        if (bounded) {
          asked[c] = random.nextInt(lots.size(c) + 1);
          most[c] = Math.min(most[c], asked[c]);
          fewest[c] = random.nextInt(6) == 0 ? random.nextInt(lots.size(c) + 1) : 0;
        }
      }
      fines = new long[lots.values.length];
      for (int v = 1; v < fines.length; v++) {
        fines[v] = random.nextInt(3) == 0 ? 0 : random.nextInt(1 + like.ofKilogram() / 5);
      }
      above = random.nextInt(2) == 0 ? -1 : random.nextInt(like.ofKilogram() * 2);
    }

    long bundles() {
      long all = 1;
      for (int c = 0; c < most.length; c++) {
        all *= lots.size(c) + 1;
      }
      return all;
    }
  }

  private void check(Question q, String where) {
    long best = best(q);
    long worth = search(q, q.above, where);
    tried++;
    withFines += Arrays.stream(q.fines).anyMatch(fine -> fine > 0) ? 1 : 0;
    settled += q.search.settled() ? 1 : 0;
    nothing += worth == NOTHING ? 1 : 0;
    if (!q.search.settled()) {
      assertEquals(best > q.above ? best : NOTHING, worth, where);
    }
    if (best > NOTHING) {
      // The dearest alone is above this, so it cannot settle for less.
      assertEquals(best, search(q, best - 1, where), where);
      // Nothing is above this, so it never settles.
      assertEquals(NOTHING, search(q, best, where), where);
      assertFalse(q.search.settled(), where);
    }
  }

  private static long best(Question q) {
    long[] best = {NOTHING};
    PlainBundle.each(
        q.fewest,
        q.asked,
        bundle -> {
          if (q.plain.keeps(bundle, q.lots.values[0], q.withinCap)) {
            best[0] = Math.max(best[0], q.plain.worth(bundle, q.prices, q.fines));
          }
        });
    return best[0];
  }

  /** What the bundle that is found is worth, and that it is one. */
  private long search(Question q, long above, String where) {
    Effort effort = new Effort(Long.MAX_VALUE / 2, Watch.NONE);
    int[] found = q.search.search(q.prices, q.fines, above, new Allowance(effort, 100_000_000));
    longer += effort.spent() > 150 ? 1 : 0;
    if (found.length == 0) {
      return NOTHING;
    }
    for (int c = 0; c < found.length; c++) {
      assertTrue(found[c] >= q.fewest[c] && found[c] <= q.most[c], where + " lot " + c);
    }
    assertTrue(q.plain.keeps(found, q.lots.values[0], q.withinCap), where);
    assertTrue(q.search.keeps(found), where);
    assertArrayEquals(q.plain.mornings(found), q.search.mornings(found), where);
    long worth = q.plain.worth(found, q.prices, q.fines);
    assertTrue(worth > above, where);
    return worth;
  }

  /** Bundles of another wish are taken over where they keep the limits of this one. */
  @Test
  void bundlesOfOtherWishes() {
    int kept = 0;
    int all = 0;
    TripGenerator.Shape shape = TripGenerator.Shape.of(4, 3, 9).without(Feature.LEAVERS);
    for (long seed = 0; seed < 200; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Model m = ModelBuilder.of(TripGenerator.trip(seed, shape));
      Lots lots = new Lots(m, wish(m, random));
      int hiker = random.nextInt(m.hikers);
      boolean withinCap = random.nextBoolean();
      int size = lots.lots.size();
      DearestBundle search =
          new DearestBundle(lots, hiker, new int[size], new int[size], withinCap ? 0 : 1);
      PlainBundle plain = new PlainBundle(lots, hiker);
      for (int turn = 0; turn < 20; turn++) {
        int[] bundle = new int[size];
        int few = random.nextInt(1, 5);
        Arrays.setAll(bundle, c -> random.nextInt(few) == 0 ? random.nextInt(1 + lots.size(c)) : 0);
        boolean keeps = plain.keepsLimits(bundle, lots.values[0], withinCap);
        assertEquals(keeps, search.keeps(bundle), "seed " + seed + " " + Arrays.toString(bundle));
        assertArrayEquals(plain.mornings(bundle), search.mornings(bundle), "seed " + seed);
        kept += keeps ? 1 : 0;
        all++;
      }
    }
    assertTrue(kept * 5 > all && kept * 5 < all * 4, kept + " of " + all);
  }

  /** What a search that was cut has found is a bundle all the same. */
  @Test
  void aCutSearch() {
    Family family = new Family(3, 15, 3, 5, Family.Hardness.MIXED, true);
    int found = 0;
    for (long seed = 0; seed < 30; seed++) {
      Model m = ModelBuilder.of(FamilyTrips.trip(seed, family));
      SplittableRandom random = new SplittableRandom(seed);
      Question q = new Question(new Lots(m, wish(m, random)), 0, random, new Prices(5, 2));
      Allowance allowance = new Allowance(new Effort(Long.MAX_VALUE, Watch.NONE), 100);
      int[] bundle = q.search.search(q.prices, q.fines, q.above, allowance);
      if (bundle.length > 0) {
        found++;
        assertTrue(q.plain.keeps(bundle, q.lots.values[0], q.withinCap), "seed " + seed);
        assertTrue(q.plain.worth(bundle, q.prices, q.fines) > q.above, "seed " + seed);
      }
    }
    assertTrue(found > 0, "nothing found");
  }
}
