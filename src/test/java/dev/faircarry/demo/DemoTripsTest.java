package dev.faircarry.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.ClaimCheck;
import dev.faircarry.check.HikerLoads;
import dev.faircarry.check.SplitCheck;
import dev.faircarry.check.Verdict;
import dev.faircarry.oracle.BruteForce;
import dev.faircarry.oracle.Value;
import dev.faircarry.solve.SplitSolver;
import dev.faircarry.solve.Watch;
import dev.faircarry.split.Demand;
import dev.faircarry.split.Outcome;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.Trip;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.file.Files;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every line of the README's table of demo trips. */
class DemoTripsTest {
  private static final long EFFORT_STEPS = 5_000_000L;
  private static final long MOST_TRIED = 3_000_000L;

  /** Proved by the mean of the first morning instead of by search. */
  private static final Set<String> BY_MEAN = Set.of("high-tarns", "many-hands");

  /** Steps of all hiker-mornings, highest first, worked out by hand: ceil(200 F / T). */
  private static final Map<String, List<Long>> STEPS =
      Map.ofEntries(
          // 9.6/12, 12/15, 14.4/18
          Map.entry("whole-things", List.of(160L, 160L, 160L)),
          // 8/10 twice
          Map.entry("shelter-in-parts", List.of(160L, 160L)),
          // 11/14, 9/12, 7/10
          Map.entry("counted-water", List.of(158L, 150L, 140L)),
          // 9.4, 8.7, 8.0 of 10, twice each
          Map.entry("three-days-of-food", List.of(188L, 188L, 174L, 174L, 160L, 160L)),
          // 10, 8.5, 8.5 of 10
          Map.entry("rules-pinned-only-barred", List.of(200L, 170L, 170L)),
          // 9, 8.4, 7.6 of 10
          Map.entry("rules-together-apart", List.of(180L, 168L, 152L)),
          // 8.5, 8.1, 7.5, 7.1 of 10
          Map.entry("rules-party-has", List.of(170L, 162L, 150L, 142L)),
          // 16/10, 15.5/10, 18/12
          Map.entry("over-cap", List.of(320L, 310L, 300L)),
          // 7.9/10 twice
          Map.entry("tie-owners", List.of(158L, 158L)),
          // 9/10 twice, 8/10 three times
          Map.entry("early-leaver", List.of(180L, 180L, 160L, 160L, 160L)),
          // 11.5 and 10 of 10
          Map.entry("hard-containers", List.of(230L, 200L)),
          // 10 and 7.5 of 10
          Map.entry("room-in-packs", List.of(200L, 150L)),
          // 7/10 twice
          Map.entry("luxury", List.of(140L, 140L)),
          // 3/12 and 2/8
          Map.entry("shared-basis", List.of(50L, 50L)),
          // 319/400 and 383/480
          Map.entry("pounds-and-ounces", List.of(160L, 160L)),
          // 12/16, 9.6/12.8, 4.5/6
          Map.entry("minors", List.of(150L, 150L, 150L)),
          // 10.6, 9.9, 9.2 of 13
          Map.entry("one-hiker", List.of(164L, 153L, 142L)),
          // 8.5/10 four times
          Map.entry("many-scripts", List.of(170L, 170L, 170L, 170L)));

  static Stream<DemoTable.Row> rows() {
    return DemoTable.rows().stream();
  }

  @Test
  void theTableHasEveryFileOnce() {
    assertEquals(DemoTrips.names(), rows().map(DemoTable.Row::name).sorted().toList(), "README.md");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theSizeIsThatOfTheTrip(DemoTable.Row row) {
    Trip trip = DemoTrips.trip(row.name());
    int pieces = trip.shared().stream().mapToInt(item -> pieces(trip, item.form())).sum();
    assertEquals(
        amount(trip.hikers().size(), "hiker")
            + ", "
            + amount(pieces, "piece")
            + ", "
            + amount(trip.days(), "day"),
        row.size());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theBestValueIsFoundAndIsTheBest(DemoTable.Row row) {
    Trip trip = DemoTrips.trip(row.name());
    Outcome outcome = SplitSolver.solve(trip, EFFORT_STEPS, Watch.NONE);
    if (row.best().equals("impossible")) {
      assertInstanceOf(Outcome.Impossible.class, outcome);
      return;
    }
    Outcome.Solved solved = assertInstanceOf(Outcome.Solved.class, outcome);
    Verdict verdict = SplitCheck.verdict(trip, solved.split());
    assertTrue(verdict.keepsRules(), () -> verdict.findings().toString());
    assertEquals(List.of(), ClaimCheck.of(trip, verdict, solved.proof()));
    BigDecimal highest =
        BigDecimal.valueOf(verdict.steps().get(0) * trip.policy().grainThousandths(), 3);
    assertEquals(row.best(), highest + (verdict.overCap() ? " over cap" : ""));
    if (BY_MEAN.contains(row.name())) {
      assertEquals(stepsOfMean(trip, verdict), verdict.steps().get(0));
    } else {
      assertEquals(STEPS.get(row.name()), verdict.steps());
      assertTrue(solved.proof().proved(), () -> solved.proof().toString());
    }
  }

  static Stream<DemoTable.Row> smallRows() {
    return rows().filter(row -> !BY_MEAN.contains(row.name()));
  }

  @ParameterizedTest
  @MethodSource("smallRows")
  void tryingEverySplitFindsNoneBetter(DemoTable.Row row) {
    BruteForce.Answer all = BruteForce.answer(DemoTrips.trip(row.name()), MOST_TRIED).orElseThrow();
    assertEquals(
        Optional.ofNullable(STEPS.get(row.name())), all.best().map(Value::steps), row::name);
  }

  @Test
  void theConflictIsTheThreeRulesToBlame() {
    Outcome.Impossible impossible =
        assertInstanceOf(
            Outcome.Impossible.class,
            SplitSolver.solve(DemoTrips.trip("impossible-rules"), EFFORT_STEPS, Watch.NONE));
    assertEquals(
        Set.of(
            new Demand.OfRule("stove-with-mei"),
            new Demand.OfRule("kitchen"),
            new Demand.OfRule("no-pot-for-mei")),
        new HashSet<>(impossible.conflict()));
    assertTrue(impossible.irreducible());
  }

  @Test
  void capsArePassedByOneKilogramOfTenAndByOwnKit() {
    Trip trip = DemoTrips.trip("over-cap");
    Outcome.Solved solved = (Outcome.Solved) SplitSolver.solve(trip, EFFORT_STEPS, Watch.NONE);
    Verdict verdict = SplitCheck.verdict(trip, solved.split());
    assertEquals(150, verdict.excessThousandths());
    assertEquals(50, verdict.ownExcessThousandths());
  }

  @Test
  void ownersCarryTheirOwnAmongEquallyFairSplits() {
    Outcome.Solved solved =
        (Outcome.Solved) SplitSolver.solve(DemoTrips.trip("tie-owners"), EFFORT_STEPS, Watch.NONE);
    assertEquals(
        Set.of("sam tarp", "lio kettle"),
        new TreeSet<>(
            solved.split().carries().stream().map(c -> c.hiker() + " " + c.piece()).toList()));
  }

  @Test
  void theLargeTripIsWhatItsGeneratorWrites() throws IOException {
    assertEquals(Files.readString(ManyHands.FILE), ManyHands.document());
  }

  /** No split can have everybody below the mean of a morning, so nobody can do better than this. */
  private static long stepsOfMean(Trip trip, Verdict verdict) {
    BigInteger counted = BigInteger.ZERO;
    BigInteger target = BigInteger.ZERO;
    for (HikerLoads hiker : verdict.hikers()) {
      counted =
          counted.add(BigInteger.valueOf(hiker.mornings().get(0).countedMilligrams() * 1_000_000L));
      target = target.add(BigInteger.valueOf(hiker.targetNanograms()));
    }
    BigInteger step = target.multiply(BigInteger.valueOf(trip.policy().grainThousandths()));
    return counted
        .multiply(BigInteger.valueOf(1000))
        .add(step)
        .subtract(BigInteger.ONE)
        .divide(step)
        .longValueExact();
  }

  private static int pieces(Trip trip, Form form) {
    return form.match(
        new Form.Cases<Integer>() {
          @Override
          public Integer whole(Form.Whole whole) {
            return 1;
          }

          @Override
          public Integer parts(Form.Parts parts) {
            return parts.parts().size();
          }

          @Override
          public Integer counted(Form.Counted counted) {
            if (counted.quantity() instanceof Form.Quantity.Fixed fixed) {
              return fixed.count();
            }
            int hikerDays =
                trip.hikers().stream().mapToInt(hiker -> hiker.lastDay(trip.days())).sum();
            return ((Form.Quantity.PerPerson) counted.quantity()).countPerDay() * hikerDays;
          }
        });
  }

  private static String amount(int number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }
}
