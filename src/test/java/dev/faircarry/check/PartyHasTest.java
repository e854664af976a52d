package dev.faircarry.check;

import static dev.faircarry.check.Judged.breaks;
import static dev.faircarry.check.Judged.keeps;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.faircarry.fixture.HikerOf.Thing;
import dev.faircarry.fixture.Splits;
import dev.faircarry.fixture.Trips;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What counts for a need, and for whom. */
class PartyHasTest {

  /** a in front, b at the back, c in no party, over two days. */
  private static Trips parties() {
    return Trips.days(2)
        .hiker("a", h -> h.target(9000).party("front"))
        .hiker("b", h -> h.target(9000).party("back"))
        .hiker("c", h -> h.target(9000));
  }

  @Test
  void namedPartiesAlone() {
    Trips trips =
        parties().item("p", s -> s.mass(10).covers("light")).partyHas("light", 1, "front");
    keeps(trips, Splits.of("a", "p"));
    Finding found = breaks(FindingCode.PARTY_LACKS, trips, Splits.of("b", "p"));
    assertEquals(List.of("a"), found.hikers());
    assertEquals(List.of("r1"), found.rules());
    assertEquals(List.of(1, 2), found.days());
  }

  @Test
  void allPartiesAndThoseWithoutOne() {
    Trips trips =
        parties().item("u", s -> s.count(3).mass(10).covers("light")).partyHas("light", 1);
    keeps(trips, Splits.of("a", "u").and("b", "u").and("c", "u"));
    assertEquals(
        List.of("c"),
        breaks(FindingCode.PARTY_LACKS, trips, Splits.of("a", "u*2").and("b", "u")).hikers());
  }

  @Test
  void atLeastTwo() {
    Trips trips =
        parties().item("u", s -> s.count(2).mass(10).covers("light")).partyHas("light", 2, "back");
    keeps(trips, Splits.of("b", "u*2"));
    breaks(FindingCode.PARTY_LACKS, trips, Splits.of("b", "u").and("a", "u"));
  }

  @Test
  void anItemInPartsCountsWhenCompleteInsideTheParty() {
    Trips trips =
        Trips.days(1)
            .hiker("a", h -> h.target(9000).party("front"))
            .hiker("b", h -> h.target(9000).party("front"))
            .hiker("c", h -> h.target(9000).party("back"))
            .item("s", s -> s.part("x", 10).part("y", 10).covers("light"))
            .partyHas("light", 1, "front");
    keeps(trips, Splits.of("a", "s/x").and("b", "s/y"));
    breaks(FindingCode.PARTY_LACKS, trips, Splits.of("a", "s/x").and("c", "s/y"));
    breaks(
        FindingCode.PARTY_LACKS,
        trips.partyHas("light", 2, "front"),
        Splits.of("a", "s/x").and("b", "s/y"));
  }

  @Test
  void usedUnitsCountNoMore() {
    Trips trips =
        parties()
            .item("u", s -> s.count(2).mass(10).covers("light").perDay(1, 0))
            .partyHas("light", 1, "front");
    keeps(trips, Splits.of("a", "u").and("b", "u").opened(1, "u", "b", 1).opened(2, "u", "a", 1));
    Splits early = Splits.of("a", "u").and("b", "u").opened(1, "u", "a", 1).opened(2, "u", "b", 1);
    assertEquals(List.of(2), breaks(FindingCode.PARTY_LACKS, trips, early).days());
  }

  @Test
  void onlyOnTheDaysAThingIsThere() {
    Trips trips =
        parties()
            .item("p", s -> s.mass(10).covers("light").onDays(2))
            .partyHas("light", 1, "front");
    assertEquals(List.of(1), breaks(FindingCode.PARTY_LACKS, trips, Splits.of("a", "p")).days());
  }

  @Test
  void kitCountsPackedOrWornWhileItsOwnerIsThere() {
    Trips trips =
        Trips.days(2)
            .hiker("a", h -> h.target(9000).leavesAfter(1).worn("lamp", 50, "light"))
            .hiker("b", h -> h.target(9000))
            .partyHas("light", 1);
    Splits nothing = Splits.of("a");
    assertEquals(List.of(2), breaks(FindingCode.PARTY_LACKS, trips, nothing).days());
    keeps(
        Trips.days(1)
            .hiker("a", h -> h.target(9000).kit(new Thing("lamp", 50).covers("light")))
            .partyHas("light", 1),
        nothing);
  }

  @Test
  void aPartyThatHasLeftNeedsNothing() {
    keeps(
        Trips.days(2)
            .hiker("a", h -> h.target(9000).party("front").leavesAfter(1))
            .hiker("b", h -> h.target(9000).party("back"))
            .item("p", s -> s.mass(10).covers("light"))
            .partyHas("light", 1, "front"),
        Splits.of("a", "p").handed(1, "a", "b", "p"));
  }

  @Test
  void anotherNeedDoesNotCount() {
    breaks(
        FindingCode.PARTY_LACKS,
        parties().item("p", s -> s.mass(10).covers("warmth")).partyHas("light", 1, "front"),
        Splits.of("a", "p"));
  }
}
