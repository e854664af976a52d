package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.fixture.HikerOf;
import dev.faircarry.fixture.HikerOf.Thing;
import dev.faircarry.fixture.ItemOf;
import dev.faircarry.fixture.Trips;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Each limit of one hiker's bundles by itself, worked out by hand. There are two hikers with a
 * target of 1000 g, in steps of 5 thousandths, and two things that differ in mass: "p" of 100 g and
 * "q" of 101 g, unless a test says more.
 */
class BundleLimitsTest {
  /** High enough for anything here. */
  private static final int HIGH = 1000;

  private static Lots lots(Trips trips, int highest) {
    Model m = ModelBuilder.of(trips.trip());
    int[] list = new int[m.mornings()];
    Arrays.fill(list, highest);
    return new Lots(m, Wish.overall(m.days, list, 0));
  }

  private static Trips trips(int days, UnaryOperator<HikerOf> first, UnaryOperator<ItemOf> both) {
    return Trips.days(days)
        .hiker("a", h -> first.apply(h.target(1000)))
        .hiker("b", h -> h.target(1000))
        .item("q", s -> both.apply(s.mass(101)))
        .item("p", s -> both.apply(s.mass(100)));
  }

  /** Either thing fits alone, both together do not, and nothing but this limit is in the way. */
  private static void oneOfTwo(Lots lots, long excessLimit) {
    BundleLimits limits = new BundleLimits(lots, 0, 0, excessLimit);
    assertEquals(2, lots.lots.size());
    assertEquals(1, limits.most(0));
    assertEquals(1, limits.most(1));
    long[] used = new long[limits.size()];
    assertTrue(limits.keep(used));
    for (int lot = 0; lot < 2; lot++) {
      assertTrue(limits.fits(used, lot));
    }
    limits.use(used, 0, 1);
    assertTrue(limits.keep(used));
    assertFalse(limits.fits(used, 1), "q and p fit");
    limits.use(used, 1, 1);
    assertFalse(limits.keep(used), "q and p are kept");
    limits.use(used, 0, -1);
    assertTrue(limits.keep(used));
    both(lots, 1, excessLimit);
  }

  /** For the other hiker, to whom nothing applies, both fit. */
  private static void both(Lots lots, int hiker, long excessLimit) {
    BundleLimits limits = new BundleLimits(lots, hiker, 0, excessLimit);
    long[] used = new long[limits.size()];
    for (int lot = 0; lot < lots.lots.size(); lot++) {
      assertEquals(1, limits.most(lot), "lot " + lot);
      assertTrue(limits.fits(used, lot));
      limits.use(used, lot, 1);
    }
    assertTrue(limits.keep(used));
  }

  private static void neither(Lots lots, int hiker) {
    BundleLimits limits = new BundleLimits(lots, hiker, 0, 0);
    for (int lot = 0; lot < lots.lots.size(); lot++) {
      assertEquals(0, limits.most(lot), "lot " + lot);
    }
  }

  /** 101 g and 100 g on 200 g of own kit are 401 of 1000 g: 80.2 steps. */
  @Test
  void massWithinAStep() {
    UnaryOperator<HikerOf> kit = h -> h.kit("quilt", 200);
    oneOfTwo(lots(trips(1, kit, s -> s), 80), 0);
    both(lots(trips(1, kit, s -> s), 81), 0, 0);
  }

  /** What is there on one day only, by turns on each of three, passes a step on that day alone. */
  @Test
  void massOnEachMorning() {
    for (int day = 1; day <= 3; day++) {
      int only = day;
      oneOfTwo(lots(trips(3, h -> h.kit("quilt", 200), s -> s.onDays(only)), 80), 0);
    }
  }

  /** Each value of the wish has limits of its own. */
  @Test
  void massWithinALowerValue() {
    Model m = ModelBuilder.of(trips(1, h -> h.kit("quilt", 200), s -> s).trip());
    Lots lots = new Lots(m, Wish.overall(1, new int[] {HIGH, 80}, 0));
    both(lots, 0, 0);
    BundleLimits lower = new BundleLimits(lots, 0, 1, 0);
    long[] used = new long[lower.size()];
    lower.use(used, 0, 1);
    assertFalse(lower.fits(used, 1));
  }

  /**
   * 200 g of own kit and 201 g pass a cap of 400 g by 1 g, which is in vain if caps may be passed.
   */
  @Test
  void cap() {
    Lots lots = lots(trips(1, h -> h.kit("quilt", 200).capLoad(400), s -> s), HIGH);
    oneOfTwo(lots, 0);
    both(lots, 0, 1);
    both(lots(trips(1, h -> h.kit("quilt", 200).capLoad(401), s -> s), HIGH), 0, 0);
  }

  /** Luxury is not in the step, but in the load that a cap is for. */
  @Test
  void capOfTheWholeLoad() {
    oneOfTwo(lots(trips(1, h -> h.luxury("chair", 300).capLoad(500), s -> s), HIGH), 0);
    both(lots(trips(1, h -> h.luxury("chair", 300), s -> s), 41), 0, 0);
  }

  @Test
  void capOnEachMorning() {
    for (int day = 1; day <= 2; day++) {
      int only = day;
      oneOfTwo(lots(trips(2, h -> h.capLoad(200), s -> s.onDays(only)), HIGH), 0);
    }
  }

  @Test
  void room() {
    oneOfTwo(lots(trips(1, h -> h.pack(0, 9), s -> s.volume(5)), HIGH), 0);
    both(lots(trips(1, h -> h.pack(0, 10), s -> s.volume(5)), HIGH), 0, 0);
    neither(lots(trips(1, h -> h.pack(0, 4), s -> s.volume(5)), HIGH), 0);
  }

  @Test
  void roomOnEachDay() {
    for (int day = 1; day <= 2; day++) {
      int only = day;
      oneOfTwo(lots(trips(2, h -> h.pack(0, 9), s -> s.volume(5).onDays(only)), HIGH), 0);
    }
  }

  private static Trips boxes(int days, UnaryOperator<HikerOf> first, UnaryOperator<ItemOf> both) {
    Trips trips =
        Trips.days(days)
            .hiker("a", h -> first.apply(h.target(1000)))
            .hiker("b", h -> h.target(1000).kit(new Thing("crate", 0).contains("food", 99)));
    return trips
        .item("q", s -> both.apply(s.mass(101).goesInto("food")))
        .item("p", s -> both.apply(s.mass(100).goesInto("food")));
  }

  @Test
  void containerVolume() {
    UnaryOperator<HikerOf> nine = h -> h.kit(new Thing("can", 0).contains("food", 9));
    oneOfTwo(lots(boxes(1, nine, s -> s.volume(5)), HIGH), 0);
    for (int day = 1; day <= 2; day++) {
      int only = day;
      oneOfTwo(lots(boxes(2, nine, s -> s.volume(5).onDays(only)), HIGH), 0);
    }
    UnaryOperator<HikerOf> ten = h -> h.kit(new Thing("can", 0).contains("food", 10));
    both(lots(boxes(1, ten, s -> s.volume(5)), HIGH), 0, 0);
  }

  /** What takes no room needs a container all the same. */
  @Test
  void containerCount() {
    neither(lots(boxes(1, h -> h, s -> s.volume(0)), HIGH), 0);
    neither(lots(boxes(2, h -> h, s -> s.onDays(2)), HIGH), 0);
    both(lots(boxes(1, h -> h, s -> s.volume(0)), HIGH), 1, 0);
    // Containers of other kinds are of no use; one for nothing is a container.
    UnaryOperator<HikerOf> fuel = h -> h.kit(new Thing("can", 0).contains("fuel", 9));
    neither(lots(boxes(1, fuel, s -> s.volume(0)), HIGH), 0);
    UnaryOperator<HikerOf> empty = h -> h.kit(new Thing("can", 0).contains("food", 0));
    both(lots(boxes(1, empty, s -> s.volume(0)), HIGH), 0, 0);
  }

  /** With a container of the group, anybody may hold anything, as far as is seen here. */
  @Test
  void containersOfTheGroupAreLeftOpen() {
    Trips trips = boxes(1, h -> h, s -> s.volume(5)).item("box", s -> s.contains("food", 6));
    both(lots(trips, HIGH), 0, 0);
  }

  @Test
  void pieces() {
    oneOfTwo(lots(trips(1, h -> h.maxPieces(1), s -> s), HIGH), 0);
    both(lots(trips(1, h -> h.maxPieces(2), s -> s), HIGH), 0, 0);
    neither(lots(trips(1, h -> h.maxPieces(0), s -> s), HIGH), 0);
  }

  /** What is kept together counts piece by piece. */
  @Test
  void piecesInBlocks() {
    Trips trips =
        Trips.days(1)
            .hiker("a", h -> h.target(1000).maxPieces(2))
            .hiker("b", h -> h.target(1000).maxPieces(3))
            .pieces(1, 2, 3)
            .together("p1", "p2", "p3");
    neither(lots(trips, HIGH), 0);
    both(lots(trips, HIGH), 1, 0);
  }

  /** Room for three things of 1 mL and two things at most use the same numbers. */
  @Test
  void theTighterOfTwoAlike() {
    Trips trips = Trips.days(1).hiker("a", h -> h.target(1000).pack(0, 3).maxPieces(2));
    trips.hiker("b", h -> h.target(1000)).item("u", s -> s.count(4).mass(1).volume(1));
    BundleLimits limits = new BundleLimits(lots(trips, HIGH), 0, 0, 0);
    assertEquals(2, limits.most(0));
    trips.item("v", s -> s.mass(2).volume(1));
    BundleLimits more = new BundleLimits(lots(trips, HIGH), 0, 0, 0);
    long[] used = new long[more.size()];
    more.use(used, 0, 1);
    more.use(used, 1, 1);
    assertTrue(more.keep(used));
    assertFalse(more.fits(used, 0));
    assertFalse(more.fits(used, 1));
  }

  @Test
  void apart() {
    Lots lots = lots(trips(1, h -> h, s -> s).apart("p", "q"), HIGH);
    BundleLimits limits = new BundleLimits(lots, 0, 0, 0);
    for (int lot = 0; lot < 2; lot++) {
      int[] other = new int[2];
      other[1 - lot] = 1;
      assertTrue(limits.clash(lot, other));
      assertFalse(limits.clash(1 - lot, other));
      assertFalse(limits.clash(other));
    }
    assertTrue(limits.clash(new int[] {1, 1}));
    Lots free = lots(trips(1, h -> h, s -> s), HIGH);
    assertFalse(new BundleLimits(free, 0, 0, 0).clash(new int[] {1, 1}));
  }

  /** Units that one rule keeps from something else are not kept from each other. */
  @Test
  void unitsAreNotApart() {
    Trips trips = Trips.targets(1000).item("u", s -> s.count(2).mass(3)).pieces(5).apart("u", "p2");
    Lots lots = lots(trips, HIGH);
    BundleLimits limits = new BundleLimits(lots, 0, 0, 0);
    int units = lots.size(0) == 2 ? 0 : 1;
    int[] both = new int[2];
    both[units] = 2;
    assertFalse(limits.clash(both));
    assertTrue(limits.clash(1 - units, both));
  }

  @Test
  void whoMayHold() {
    Lots lots = lots(trips(1, h -> h, s -> s).barred(List.of("a"), "p", "q"), HIGH);
    neither(lots, 0);
    both(lots, 1, 0);
  }

  /**
   * 200 g on the first and third morning and 100 g on the second, on values of 100, 30 and 10 steps
   * of 5 g: above 150 g twice and above 50 g on all three.
   */
  @Test
  void fines() {
    Trips trips =
        Trips.days(3)
            .hiker("a", h -> h.target(1000))
            .item("p", s -> s.mass(100))
            .item("q", s -> s.mass(100).onDays(1, 3));
    Model m = ModelBuilder.of(trips.trip());
    Lots lots = new Lots(m, Wish.overall(3, new int[] {100, 30, 10}, 0));
    BundleLimits limits = new BundleLimits(lots, 0, 0, 0);
    long[] used = new long[limits.size()];
    BundleLimits.Fines fines = limits.fines(new long[] {0, 7, 2});
    assertEquals(0, fines.of(used));
    assertEquals(7 + 2, fines.least());
    limits.use(used, 0, 1);
    limits.use(used, 1, 1);
    assertEquals(2 * 7 + 3 * 2, fines.of(used));
    BundleLimits within = new BundleLimits(lots, 0, 1, 0);
    BundleLimits.Fines lower = within.fines(new long[] {0, 7, 2});
    assertEquals(2, lower.least());
    long[] one = new long[within.size()];
    int always = lots.sample(0).contents().get(0).there()[1] ? 0 : 1;
    within.use(one, always, 1);
    assertEquals(3 * 2, lower.of(one));
  }
}
