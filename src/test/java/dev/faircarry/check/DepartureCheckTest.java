package dev.faircarry.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.fixture.HikerOf;
import dev.faircarry.fixture.Trips;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class DepartureCheckTest {
  private static final String[] PERSONAL = {"sun", "warmth", "light", "food", "water"};

  private static UnaryOperator<HikerOf> equipped(long target) {
    return h -> h.target(target).worn("all", 0, PERSONAL);
  }

  private static Split split(String... carries) {
    return new Split(
        Arrays.stream(carries)
            .map(c -> c.split(" ", -1))
            .map(c -> new Carry(c[0], PieceRef.of(c[1]), 1))
            .toList(),
        List.of(),
        List.of());
  }

  private static Departure of(Trip trip, Split split) {
    return DepartureCheck.of(trip, split, Optional.empty(), Essentials.DEFAULT);
  }

  private static Set<FindingCode> codes(Departure departure) {
    return Set.copyOf(departure.findings().stream().map(Finding::code).toList());
  }

  private static Trips group() {
    return Trips.days(1)
        .hiker("a", equipped(10_000))
        .hiker("b", equipped(10_000))
        .item("map", s -> s.mass(100).covers("navigation"))
        .item("aid", s -> s.mass(400).covers("first-aid"))
        .item("bag", s -> s.mass(300).covers("fire", "repair", "emergency-shelter"));
  }

  @Test
  void aGroupWithEverythingIsReady() {
    Departure departure = of(group().trip(), split("a map", "b aid", "b bag"));
    // First aid and shelter are there once, both in one pack; labels are mere advice.
    assertEquals(
        Set.of(FindingCode.SCARCE_TOGETHER, FindingCode.MASSES_FROM_LABELS), codes(departure));
    Departure apart = of(group().trip(), split("a map", "a bag", "b aid"));
    assertEquals(Departure.Readiness.READY_WITH_CAUTIONS, apart.readiness());
    Trip three = group().hiker("c", equipped(10_000)).trip();
    assertEquals(
        Departure.Readiness.READY, of(three, split("a map", "b aid", "c bag")).readiness());
  }

  @Test
  void whatIsNotCarriedIsNotReady() {
    Departure departure = of(group().trip(), split("a map", "b aid"));
    assertEquals(Departure.Readiness.NOT_READY, departure.readiness());
    assertEquals(FindingCode.NOT_CARRIED, departure.findings().get(0).code());
    assertTrue(departure.fairness().isEmpty());
  }

  @Test
  void ownEssentialsAndPartiesAreLookedAt() {
    Trip trip =
        group()
            .hiker("c", h -> h.target(10_000).worn("some", 0, "sun", "warmth", "light", "food"))
            .trip();
    Departure departure = of(trip, split("a map", "b aid", "c bag"));
    Finding missing =
        departure.findings().stream()
            .filter(f -> f.code() == FindingCode.ESSENTIAL_MISSING)
            .findFirst()
            .orElseThrow();
    assertEquals("c has no own hydration.", missing.message());
    Trip parted = group().hiker("c", h -> equipped(10_000).apply(h).party("back")).trip();
    assertEquals(
        List.of(
            "Party “back” has nothing that covers navigation.",
            "Party “back” has nothing that covers first aid."),
        of(parted, split("a map", "b aid", "c bag")).findings().stream()
            .filter(f -> f.code() == FindingCode.NEED_NOT_COVERED)
            .filter(f -> f.message().startsWith("Party"))
            .map(Finding::message)
            .toList());
  }

  @Test
  void labelsCouldShiftTheWorst() {
    // 8,000 g of labels on a target of 10,000 g: 800 thousandths, with a tenth more 880.
    Trip trip = Trips.targets(10_000).pieces(8000).trip();
    LabelDoubt labels = of(trip, split("a p1")).labels();
    assertEquals(new LabelDoubt(8_000_000, 800, 880), labels);
  }

  @Test
  void aChangedTripMakesTheSplitStale() {
    Trip then = Trips.targets(10_000).pieces(8000).trip();
    Trip now = Trips.targets(11_000).pieces(8000).trip();
    Departure departure =
        DepartureCheck.of(now, split("a p1"), Optional.of(then), Essentials.DEFAULT);
    Finding stale =
        departure.findings().stream()
            .filter(f -> f.code() == FindingCode.STALE)
            .findFirst()
            .orElseThrow();
    assertEquals("Since the split was made, these have changed: hiker “a”.", stale.message());
    assertTrue(
        DepartureCheck.of(then, split("a p1"), Optional.of(then), Essentials.DEFAULT)
            .findings()
            .stream()
            .noneMatch(f -> f.code() == FindingCode.STALE));
  }

  @Test
  void fuelWithFoodAndMinorsLoads() {
    Trip trip =
        Trips.days(1)
            .hiker("a", h -> h.target(1_000).minor())
            .minorsMayCarryFlameAndFuel()
            .item("gas", s -> s.mass(400).covers("fuel"))
            .item("oats", s -> s.mass(700).covers("food"))
            .trip();
    Departure departure = of(trip, split("a gas", "a oats"));
    assertTrue(
        codes(departure)
            .containsAll(Set.of(FindingCode.FUEL_WITH_FOOD, FindingCode.MINOR_ABOVE_TARGET)),
        departure.findings()::toString);
    assertTrue(
        departure.findings().stream()
            .anyMatch(
                f -> f.message().equals("a, a minor, carries up to 100 g more than the target.")));
  }

  @Test
  void theBestHandoverAndTheBestExchange() {
    // 9 kg and 4 kg: giving away the 2 kg leaves 7 and 6; trading 4 for 2 gives 7 and 6 as well;
    // so only the single handover is worth telling.
    Trip trip = Trips.targets(10_000, 10_000).pieces(7000, 2000, 4000).trip();
    Fairness fairness = of(trip, split("a p1", "a p2", "b p3")).fairness().orElseThrow();
    assertEquals(500, fairness.spreadThousandths());
    assertEquals(
        List.of(-1_000_000L, -6_000_000L),
        fairness.standings().stream().map(Fairness.Standing::aboveMilligrams).toList());
    assertEquals(1, fairness.gains().size());
    assertEquals(PieceRef.item("p2"), fairness.gains().get(0).piece());
    assertEquals(700, fairness.gains().get(0).worstThousandths());
    Trip other = Trips.targets(10_000, 10_000).pieces(7000, 5000, 1000).trip();
    Fairness better = of(other, split("a p1", "b p2", "a p3")).fairness().orElseThrow();
    // 8 and 5: the handover of 1 gives 7 and 6; trading 7 for 5 gives 6 and 7, no better.
    assertEquals(1, better.gains().size());
    assertEquals(700, better.gains().get(0).worstThousandths());
  }
}
