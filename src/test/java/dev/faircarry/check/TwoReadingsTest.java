package dev.faircarry.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.oracle.RandomSplits;
import dev.faircarry.oracle.SplitReading;
import dev.faircarry.oracle.TripGenerator;
import dev.faircarry.oracle.TripGenerator.Shape;
import dev.faircarry.oracle.Value;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The checker and the oracle's plain reading of the format say the same of any split. */
class TwoReadingsTest {
  private static final List<Shape> SHAPES =
      List.of(Shape.of(3, 1, 6), Shape.of(3, 4, 5), Shape.of(4, 3, 5));

  private final Map<FindingCode, Integer> seen = new EnumMap<>(FindingCode.class);
  private int kept;

  private void compare(Trip trip, Split split, String seed) {
    Verdict verdict = SplitCheck.verdict(trip, split);
    Optional<Value> value = SplitReading.value(trip, split);
    assertEquals(
        value.isPresent(), verdict.keepsRules(), () -> seed + " " + verdict.findings() + split);
    value.ifPresent(
        v -> {
          kept++;
          assertEquals(v, new Value(verdict.excessThousandths(), verdict.steps()), seed);
        });
    verdict.findings().forEach(f -> seen.merge(f.code(), 1, Integer::sum));
  }

  @Test
  void soundSplits() {
    for (long seed = 0; seed < 900; seed++) {
      Trip trip = TripGenerator.trip(seed, SHAPES.get((int) (seed % SHAPES.size())));
      SplittableRandom random = new SplittableRandom(seed);
      for (int k = 0; k < 8; k++) {
        compare(trip, RandomSplits.sound(trip, random), "seed " + seed + ", split " + k);
      }
    }
    assertTrue(kept > 400, "too few splits keep all rules: " + kept);
    for (FindingCode code :
        List.of(
            FindingCode.PINNED_ELSEWHERE,
            FindingCode.NOT_ALLOWED,
            FindingCode.BARRED,
            FindingCode.MINOR_CARRIES_FLAME_OR_FUEL,
            FindingCode.NOT_TOGETHER,
            FindingCode.NOT_APART,
            FindingCode.PARTY_LACKS,
            FindingCode.NO_ROOM,
            FindingCode.NO_CONTAINER,
            FindingCode.TOO_MANY_PIECES,
            FindingCode.OVER_CAP)) {
      assertTrue(seen.getOrDefault(code, 0) > 50, code + " was hardly tried: " + seen);
    }
  }

  @Test
  void damagedSplits() {
    for (long seed = 5000; seed < 5900; seed++) {
      Trip trip = TripGenerator.trip(seed, SHAPES.get((int) (seed % SHAPES.size())));
      SplittableRandom random = new SplittableRandom(seed);
      for (int k = 0; k < 6; k++) {
        Split split = RandomSplits.damaged(trip, RandomSplits.sound(trip, random), random);
        compare(trip, split, "seed " + seed + ", split " + k);
      }
    }
    for (FindingCode code :
        List.of(
            FindingCode.NOT_CARRIED,
            FindingCode.CARRIED_TWICE,
            FindingCode.UNKNOWN_PIECE,
            FindingCode.UNKNOWN_HIKER,
            FindingCode.OPENING_PLAN_WRONG,
            FindingCode.CAMP_HANDOVER_WRONG)) {
      assertTrue(seen.getOrDefault(code, 0) > 50, code + " was hardly tried: " + seen);
    }
  }
}
