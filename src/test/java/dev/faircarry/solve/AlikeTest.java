package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.fixture.Trips;
import dev.faircarry.oracle.BruteForce;
import dev.faircarry.oracle.SplitReading;
import dev.faircarry.oracle.Value;
import dev.faircarry.split.Demand;
import dev.faircarry.split.Outcome;
import dev.faircarry.trip.Trip;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Hikers and things that differ in nothing are tried in one order only. That must lose no value,
 * and only what rules treat alike is alike.
 */
class AlikeTest {
  private static final long EFFORT = 3_000_000;
  private static final long MOST_SPLITS = 40_000;

  private static Value proved(Trip trip, String where) {
    Outcome.Solved solved =
        assertInstanceOf(Outcome.Solved.class, SplitSolver.solve(trip, EFFORT, Watch.NONE), where);
    assertTrue(solved.proof().proved(), where);
    return SplitReading.value(trip, solved.split()).orElseThrow();
  }

  private static Value best(Trip trip) {
    return BruteForce.answer(trip, MOST_SPLITS).orElseThrow().best().orElseThrow();
  }

  @Test
  void alikeHikers() {
    for (long seed = 0; seed < 40; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Trips trips = Trips.days(1 + random.nextInt(2)).grain(1);
      long kit = random.nextInt(200, 600);
      long room = random.nextInt(12, 20);
      int most = random.nextInt(2, 8);
      for (String id : List.of("a", "b", "c", "d")) {
        trips.hiker(id, h -> h.target(1000).pack(10, room + 3).kit("kit", kit).maxPieces(most));
      }
      for (int k = 0; k < 6; k++) {
        long grams = random.nextInt(20, 300);
        long volume = random.nextInt(1, 8);
        trips.item("p" + k, s -> s.mass(grams).volume(volume));
      }
      Trip trip = trips.trip();
      assertEquals(best(trip), proved(trip, "seed " + seed), "seed " + seed);
    }
  }

  /** Units of a counted item, and as many single things of the same mass. */
  @Test
  void alikeThings() {
    for (long seed = 0; seed < 30; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      long grams = random.nextInt(30, 200);
      long[] others = random.longs(3, 20, 300).toArray();
      int count = random.nextInt(2, 6);
      Trips units = hikers(seed).pieces(others).item("u", s -> s.count(count).mass(grams));
      Trips single = hikers(seed).pieces(others);
      String[] names = new String[count];
      for (int k = 0; k < count; k++) {
        names[k] = "u" + k;
        single.item(names[k], s -> s.mass(grams));
      }
      if (seed % 2 == 0) {
        units.barred(List.of("b"), "u");
        single.barred(List.of("b"), names);
      }
      Value value = proved(units.trip(), "seed " + seed);
      assertEquals(best(units.trip()), value, "seed " + seed);
      assertEquals(value, proved(single.trip(), "seed " + seed), "seed " + seed);
    }
  }

  private static Trips hikers(long seed) {
    SplittableRandom random = new SplittableRandom(-1 - seed);
    return Trips.targets(
            random.nextInt(800, 1200), random.nextInt(800, 1200), random.nextInt(800, 1200))
        .grain(1);
  }

  /** Two things of 500 grams, one of them pinned: one with each of two hikers, in either order. */
  @Test
  void onlyWhatRulesTreatAlike() {
    Value even = new Value(0, List.of(100L, 100L));
    for (String hiker : List.of("a", "b")) {
      for (String piece : List.of("p1", "p2")) {
        Trip trip = Trips.targets(1000, 1000).pieces(500, 500).pinned(hiker, piece).trip();
        assertEquals(even, proved(trip, piece + " with " + hiker));
      }
    }
    // One who may carry one thing only, and one who may not carry anything of this.
    Trip unlike =
        Trips.days(1)
            .hiker("a", h -> h.target(1000))
            .hiker("b", h -> h.target(1000).maxPieces(1))
            .hiker("c", h -> h.target(1000))
            .item("u", s -> s.count(4).mass(100))
            .barred(List.of("a"), "u")
            .trip();
    assertEquals(new Value(0, List.of(60L, 20L, 0L)), proved(unlike, "one, none, the rest"));
  }

  /** Which blocks are alike, by the order in which the trip has them. */
  private static int[] classes(Trip trip) {
    return ModelBuilder.of(trip).blocks.stream().mapToInt(Block::symmetryClass).toArray();
  }

  private static Trips volumes(Trips trips) {
    return trips
        .item("small", s -> s.mass(100).volume(2))
        .item("large", s -> s.mass(100).volume(5))
        .item("other", s -> s.mass(100).volume(2));
  }

  /** Volumes matter as soon as one pack has one, even where everything fits. */
  @Test
  void volumesTellApartWhereAPackHasOne() {
    Trips anyRoom = Trips.days(1).hiker("a", h -> h.target(900)).hiker("b", h -> h.body(9000));
    assertArrayEquals(new int[] {0, 0, 0}, classes(volumes(anyRoom).trip()));
    Trips noVolume = Trips.targets(900).hiker("b", h -> h.target(900).pack(100));
    assertArrayEquals(new int[] {0, 0, 0}, classes(volumes(noVolume).trip()));
    Trips oneRoom = Trips.targets(900).hiker("b", h -> h.target(900).pack(100, 1000));
    assertArrayEquals(new int[] {0, 1, 0}, classes(volumes(oneRoom).trip()));
  }

  /** What goes into a container takes its room, whatever packs have. */
  @Test
  void volumesInsideContainersTellApart() {
    Trip trip =
        Trips.targets(900)
            .item("small", s -> s.mass(100).volume(2).goesInto("food"))
            .item("large", s -> s.mass(100).volume(5).goesInto("food"))
            .item("other", s -> s.mass(100).volume(2).goesInto("food"))
            .trip();
    assertArrayEquals(new int[] {0, 1, 0}, classes(trip));
  }

  private static Trips covers() {
    return Trips.targets(900, 900)
        .item("lamp", s -> s.mass(100).covers("light"))
        .item("stove", s -> s.mass(100).covers("flame"))
        .item("torch", s -> s.mass(100).covers("light"))
        .item("both", s -> s.mass(100).covers("light", "flame"))
        .item("cup", s -> s.mass(100));
  }

  @Test
  void coversTellApartWhereAPartyNeedsThem() {
    assertArrayEquals(new int[] {0, 0, 0, 0, 0}, classes(covers().trip()));
    assertArrayEquals(new int[] {0, 1, 0, 0, 1}, classes(covers().partyHas("light", 1).trip()));
    assertArrayEquals(
        new int[] {0, 1, 0, 2, 3},
        classes(covers().partyHas("light", 1).partyHas("flame", 1).trip()));
    // A rule that is not asked for tells nothing apart.
    Trip dropped = covers().partyHas("light", 1).trip();
    Model m = ModelBuilder.of(dropped, demand -> !demand.equals(new Demand.OfRule("r1")));
    assertEquals(1, m.blocks.stream().map(Block::symmetryClass).distinct().count());
  }

  /** Parts that cover a need count only with their siblings; others are things like any other. */
  @Test
  void partsOfWhatNobodyNeeds() {
    Trips tents =
        Trips.targets(900, 900)
            .item("tent", s -> s.part("fly", 100).part("inner", 100).covers("shelter"))
            .item("tarp", s -> s.part("sheet", 100).part("pegs", 100).covers("shelter"))
            .item("cup", s -> s.mass(100));
    assertArrayEquals(new int[] {0, 0, 0, 0, 0}, classes(tents.trip()));
    assertArrayEquals(new int[] {0, 1, 2, 3, 4}, classes(tents.partyHas("shelter", 1).trip()));
  }

  /** The same trips against trying everything, with volumes and covers that are told apart. */
  @Test
  void volumesAndCoversLoseNothing() {
    int solved = 0;
    for (long seed = 0; seed < 60; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Trips trips = Trips.days(1 + random.nextInt(2)).grain(1);
      for (String id : List.of("a", "b", "c")) {
        trips.hiker(
            id,
            h -> {
              h.target(random.nextInt(800, 1200)).party(random.nextBoolean() ? "front" : "back");
              return random.nextInt(3) == 0 ? h.pack(0, random.nextInt(5, 15)) : h;
            });
      }
      // Masses are few, so that only volumes and covers tell things apart.
      for (int k = 0; k < 6; k++) {
        long grams = 100L * random.nextInt(1, 3);
        long volume = random.nextInt(1, 5);
        int kind = random.nextInt(4);
        trips.item(
            "p" + k,
            s -> {
              if (kind == 0) {
                s.part("one", grams, volume).part("two", grams, volume);
              } else {
                s.mass(grams).volume(volume);
              }
              return kind < 2 ? s.covers("light") : s;
            });
      }
      if (random.nextBoolean()) {
        trips.partyHas("light", 1);
      }
      Trip trip = trips.trip();
      Optional<Value> best = BruteForce.answer(trip, MOST_SPLITS).flatMap(BruteForce.Answer::best);
      if (best.isPresent()) {
        solved++;
        assertEquals(best.get(), proved(trip, "seed " + seed), "seed " + seed);
      }
    }
    assertTrue(solved > 30, solved + " solved");
  }
}
