package dev.faircarry.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.faircarry.Vectors;
import dev.faircarry.fixture.HikerOf.Thing;
import dev.faircarry.fixture.Splits;
import dev.faircarry.fixture.Trips;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Policy;
import dev.faircarry.trip.Trip;
import dev.faircarry.unit.Fraction;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Parse;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.ToLongFunction;
import org.junit.jupiter.api.Test;

/** Loads, steps and caps worked out by hand. Milligrams unless said otherwise. */
class LoadsTest {

  private static List<Long> of(Verdict verdict, int hiker, ToLongFunction<Morning> what) {
    return verdict.hikers().get(hiker).mornings().stream().map(what::applyAsLong).toList();
  }

  @Test
  void evenlyRoundsWhatIsUsedDown() {
    // 100 g over 3 days: 33,333.3 used after one day, 66,666.7 after two.
    Trips trips =
        Trips.days(3)
            .hiker("a", h -> h.target(1000))
            .item("gas", s -> s.mass(100).evenly(0))
            .item("u", s -> s.count(2).mass(40).evenly(10));
    Verdict verdict = Judged.verdict(trips, Splits.of("a", "gas", "u*2"));
    // each unit: 40,000; 30,000 (10,000 used); 20,000.
    assertEquals(
        List.of(100_000L + 80_000, 66_667L + 60_000, 33_334L + 40_000),
        of(verdict, 0, Morning::loadMilligrams));
    assertEquals(List.of(20_000L, 20_000L, 20_000L), of(verdict, 0, Morning::baseMilligrams));
    assertEquals(
        List.of(160_000L, 106_667L, 53_334L), of(verdict, 0, Morning::consumablesMilligrams));
  }

  @Test
  void ownKitRunsOverOwnDays() {
    // 800 g that leave 40 g over two days: 380 g a day.
    Trips trips =
        Trips.days(3)
            .hiker(
                "a",
                h ->
                    h.target(1000)
                        .leavesAfter(2)
                        .pack(500)
                        .kit(new Thing("snacks", 800).evenly(40))
                        .worn("shoes", 620))
            .hiker("b", h -> h.target(1000));
    Verdict verdict = Judged.verdict(trips, Splits.of("a"));
    assertEquals(List.of(1_300_000L, 920_000L), of(verdict, 0, Morning::loadMilligrams));
    assertEquals(List.of(540_000L, 540_000L), of(verdict, 0, Morning::baseMilligrams));
    assertEquals(List.of(760_000L, 380_000L), of(verdict, 0, Morning::consumablesMilligrams));
    assertEquals(List.of(620_000L, 620_000L), of(verdict, 0, Morning::wornMilligrams));
    assertEquals(List.of(0L, 0L), of(verdict, 0, Morning::sharedMilligrams));
    assertEquals(List.of(0L, 0L, 0L), of(verdict, 1, Morning::loadMilligrams));
  }

  @Test
  void usedUnitsLeaveTheirPackagingWhereTheyWere() {
    // 170 g each, 12 g of it packaging; two a day of four.
    Trips trips =
        Trips.days(3)
            .hiker("a", h -> h.target(1000))
            .hiker("b", h -> h.target(1000))
            .item("dinner", s -> s.count(4).mass(170).perDay(2, 12));
    Verdict verdict =
        Judged.verdict(
            trips,
            Splits.of("a", "dinner*3")
                .and("b", "dinner")
                .opened(1, "dinner", "a", 1)
                .opened(1, "dinner", "b", 1)
                .opened(2, "dinner", "a", 2));
    assertEquals(List.of(), verdict.findings());
    assertEquals(List.of(510_000L, 352_000L, 36_000L), of(verdict, 0, Morning::sharedMilligrams));
    assertEquals(List.of(170_000L, 12_000L, 12_000L), of(verdict, 1, Morning::loadMilligrams));
    assertEquals(List.of(36_000L, 36_000L, 36_000L), of(verdict, 0, Morning::baseMilligrams));
    assertEquals(List.of(474_000L, 316_000L, 0L), of(verdict, 0, Morning::consumablesMilligrams));
  }

  @Test
  void packagingLeavesWithTheLeaverAndUnitsAreHandedOn() {
    Trips trips =
        Trips.days(2)
            .hiker("a", h -> h.target(1000).leavesAfter(1))
            .hiker("b", h -> h.target(1000))
            .item("u", s -> s.count(3).mass(100).perDay(1, 20))
            .item("pot", s -> s.mass(50));
    Verdict verdict =
        Judged.verdict(
            trips,
            Splits.of("a", "u*3", "pot")
                .opened(1, "u", "a", 1)
                .opened(2, "u", "b", 1)
                .handed(1, "a", "b", "u", 2)
                .handed(1, "a", "b", "pot"));
    assertEquals(List.of(), verdict.findings());
    assertEquals(List.of(350_000L), of(verdict, 0, Morning::loadMilligrams));
    assertEquals(List.of(0L, 250_000L), of(verdict, 1, Morning::loadMilligrams));
    assertEquals(List.of(70L, 50L, 0L), verdict.steps());
  }

  @Test
  void someDaysOnly() {
    Trips trips =
        Trips.days(3)
            .hiker("a", h -> h.target(9000))
            .item("water", s -> s.count(6).mass(1000).onDays(2));
    Verdict verdict = Judged.verdict(trips, Splits.of("a", "water*6"));
    assertEquals(List.of(0L, 6_000_000L, 0L), of(verdict, 0, Morning::loadMilligrams));
  }

  @Test
  void perPersonFollowsTheParty() {
    // Two people on day 1, one on day 2: three units, two and one used.
    Trips trips =
        Trips.days(2)
            .hiker("a", h -> h.target(1000).leavesAfter(1))
            .hiker("b", h -> h.target(1000))
            .item("muesli", s -> s.perPerson(1).mass(110).usedByParty(0))
            .item("tag", s -> s.perPerson(2).mass(1).onDays(2));
    Verdict verdict =
        Judged.verdict(
            trips,
            Splits.of("b", "muesli*3", "tag*2")
                .opened(1, "muesli", "b", 2)
                .opened(2, "muesli", "b", 1));
    assertEquals(List.of(), verdict.findings());
    assertEquals(List.of(330_000L, 112_000L), of(verdict, 1, Morning::loadMilligrams));
  }

  @Test
  void listedUseStopsWhenNothingIsLeft() {
    Trips trips =
        Trips.days(3)
            .hiker("a", h -> h.target(1000))
            .item("u", s -> s.count(3).mass(100).perDay(List.of(0, 2, 5), 0));
    Verdict verdict =
        Judged.verdict(trips, Splits.of("a", "u*3").opened(2, "u", "a", 2).opened(3, "u", "a", 1));
    assertEquals(List.of(), verdict.findings());
    assertEquals(List.of(300_000L, 300_000L, 100_000L), of(verdict, 0, Morning::loadMilligrams));
  }

  @Test
  void luxuriesAreCarriedButNotCounted() {
    Trips trips =
        Trips.days(1)
            .hiker("a", h -> h.target(1000).pack(100).kit("quilt", 200).luxury("chair", 400))
            .item("pot", s -> s.mass(30));
    Verdict verdict = Judged.verdict(trips, Splits.of("a", "pot"));
    assertEquals(List.of(730_000L), of(verdict, 0, Morning::loadMilligrams));
    assertEquals(List.of(330_000L), of(verdict, 0, Morning::countedMilligrams));
    assertEquals(List.of(66L), verdict.steps());
    Verdict shared = Judged.verdict(trips.basisShared(), Splits.of("a", "pot"));
    assertEquals(List.of(730_000L), of(shared, 0, Morning::loadMilligrams));
    assertEquals(List.of(30_000L), of(shared, 0, Morning::countedMilligrams));
    assertEquals(List.of(6L), shared.steps());
  }

  @Test
  void stepsRoundUpAndStayOnTheBoundary() {
    // Grain 5 of 3 kg: one step is 15 g.
    Trips trips =
        Trips.targets(3000, 3000, 3000, 3000).pieces(45, 46, 44).item("nothing", s -> s.mass(0));
    Splits split = Splits.of("a", "p1").and("b", "p2").and("c", "p3").and("d", "nothing");
    assertEquals(List.of(4L, 3L, 3L, 0L), Judged.verdict(trips, split).steps());
    // Grain 1: one step is 3 g. 45 = 15 x 3; 46 and 44 lie between.
    assertEquals(List.of(16L, 15L, 15L, 0L), Judged.verdict(trips.grain(1), split).steps());
  }

  @Test
  void theLeastCapIsTheCap() {
    Trips body = Trips.days(1).fractions("0.20", "0.30").hiker("a", h -> h.body(10_000));
    assertEquals(OptionalLong.of(3_000_000_000_000L), cap(body));
    assertEquals(
        OptionalLong.of(2_000_000_000_000L),
        cap(Trips.days(1).hiker("a", h -> h.body(10_000).capLoad(2000))));
    assertEquals(
        OptionalLong.of(1_000_000_000_000L),
        cap(
            Trips.days(1)
                .hiker(
                    "a",
                    h ->
                        h.body(10_000)
                            .capLoad(2000)
                            .pack(0, Optional.empty(), Optional.of(Trips.grams(1000))))));
    assertEquals(
        OptionalLong.of(500_000_000_000L),
        cap(Trips.days(1).hiker("a", h -> h.body(10_000).capFraction("0.05"))));
    assertEquals(OptionalLong.empty(), cap(Trips.targets(1000)));
    // A stated target wins, the cap fraction still applies to the body mass.
    Trips both = Trips.days(1).hiker("a", h -> h.body(10_000).target(4000));
    assertEquals(OptionalLong.of(3_000_000_000_000L), cap(both));
    assertEquals(4_000_000_000_000L, target(both));
  }

  private static OptionalLong cap(Trips trips) {
    return Judged.verdict(trips, Splits.of("a")).hikers().get(0).mornings().get(0).capNanograms();
  }

  private static long target(Trips trips) {
    return Judged.verdict(trips, Splits.of("a")).hikers().get(0).targetNanograms();
  }

  @Test
  void minorsHaveTheLowerOfTwoFractions() {
    Trips usual = Trips.days(1).fractions("0.20", "0.30").hiker("a", h -> h.body(40_000).minor());
    assertEquals(6_000_000_000_000L, target(usual));
    assertEquals(OptionalLong.of(8_000_000_000_000L), cap(usual));
    Trips low = Trips.days(1).fractions("0.10", "0.12").hiker("a", h -> h.body(40_000).minor());
    assertEquals(4_000_000_000_000L, target(low));
    assertEquals(OptionalLong.of(4_800_000_000_000L), cap(low));
    Trips own =
        Trips.days(1)
            .hiker("a", h -> h.body(40_000).minor().targetFraction("0.18").capFraction("0.25"));
    assertEquals(7_200_000_000_000L, target(own));
    assertEquals(OptionalLong.of(10_000_000_000_000L), cap(own));
  }

  @Test
  void excessIsInThousandthsOfTheTargetRoundedUp() {
    // a: 201 g against 200, target 3 kg: a third of a thousandth. b: own 300 against 250 of 1 kg.
    Trips trips =
        Trips.days(1)
            .hiker("a", h -> h.target(3000).capLoad(200))
            .hiker("b", h -> h.target(1000).capLoad(250).kit("tent", 300))
            .pieces(201, 10);
    Verdict verdict = Judged.verdict(trips, Splits.of("a", "p1").and("b", "p2"));
    assertEquals(List.of(1L), of(verdict, 0, Morning::excessThousandths));
    assertEquals(List.of(60L), of(verdict, 1, Morning::excessThousandths));
    assertEquals(61, verdict.excessThousandths());
    assertEquals(50, verdict.ownExcessThousandths());
    assertEquals(true, verdict.overCap());
    assertEquals(true, verdict.keepsRules());
    assertEquals(
        List.of(FindingCode.OVER_CAP, FindingCode.OVER_CAP, FindingCode.OWN_KIT_OVER_CAP),
        verdict.findings().stream().map(Finding::code).sorted().toList());
    assertEquals(
        List.of(Severity.CAUTION),
        verdict.findings().stream().map(Finding::severity).distinct().toList());
    Verdict exact = Judged.verdict(trips.pieces(0), Splits.of("b", "p1", "p2", "p3"));
    assertEquals(0, exact.hikers().get(0).mornings().get(0).excessThousandths());
  }

  @Test
  void aLoadJustOnItsCapIsWithinIt() {
    Trips trips = Trips.days(1).hiker("a", h -> h.target(1000).capLoad(200)).pieces(200);
    Verdict verdict = Judged.verdict(trips, Splits.of("a", "p1"));
    assertEquals(0, verdict.excessThousandths());
    assertEquals(List.of(), verdict.findings());
  }

  /** The fractions those guidelines state; the vectors give them as pounds of a body mass. */
  private static final Map<String, List<String>> FRACTIONS =
      Map.of(
          "L1", List.of("0.10", "0.10"),
          "L2", List.of("0.15", "0.20"),
          "L3", List.of("0.20", "0.20"),
          "L4", List.of("0.10", "0.15"),
          "L6", List.of("0.10", "0.20"),
          "L7", List.of("0.33", "0.33"));

  @Test
  void publishedLoadsForABodyMassInPounds() {
    Vectors.of("load", "load_fraction")
        .forEach(
            vector -> {
              List<String> fractions = FRACTIONS.getOrDefault(vector.id(), List.of());
              assertEquals(2, fractions.size(), vector.toString());
              String body = BigDecimal.valueOf(vector.in("body")).toPlainString() + " lb";
              Mass mass = ((Parse.Read<Mass>) Mass.parse(body)).value();
              Trip trip =
                  new Trip(
                      "Pounds",
                      1,
                      Policy.DEFAULT,
                      List.of(hiker(mass, fractions.get(0), fractions.get(1))),
                      List.of(),
                      List.of());
              HikerLoads loads = SplitCheck.verdict(trip, Splits.of("a").split()).hikers().get(0);
              String message = vector.toString();
              assertEquals(
                  vector.out("low"), pounds(loads.targetNanograms()), vector.tolerance(), message);
              assertEquals(
                  vector.out("high"),
                  pounds(loads.mornings().get(0).capNanograms().orElseThrow()),
                  vector.tolerance(),
                  message);
            });
  }

  private static double pounds(long nanograms) {
    return nanograms / 453_592_370_000.0;
  }

  private static Hiker hiker(Mass body, String target, String cap) {
    return new Hiker(
        "a",
        "A",
        Optional.of(body),
        Optional.empty(),
        Optional.of(Fraction.of(target)),
        Optional.of(Fraction.of(cap)),
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        false,
        OptionalInt.empty(),
        Optional.empty(),
        List.of());
  }
}
