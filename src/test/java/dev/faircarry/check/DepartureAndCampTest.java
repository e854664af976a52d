package dev.faircarry.check;

import static dev.faircarry.check.Judged.breaks;
import static dev.faircarry.check.Judged.keeps;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.fixture.Splits;
import dev.faircarry.fixture.Trips;
import dev.faircarry.trip.PieceRef;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Everything is carried once, opened as it is used, and handed on by those who leave. */
class DepartureAndCampTest {

  private static Trips two() {
    return Trips.targets(9000, 9000);
  }

  @Test
  void everyPieceOnce() {
    Trips trips = two().pieces(10, 10);
    keeps(trips, Splits.of("a", "p1").and("b", "p2"));
    Finding none = breaks(FindingCode.NOT_CARRIED, trips, Splits.of("a", "p1"));
    assertEquals(List.of(PieceRef.of("p2")), none.pieces());
    Finding twice =
        breaks(FindingCode.CARRIED_TWICE, trips, Splits.of("a", "p1", "p2").and("b", "p2"));
    assertEquals(List.of("a", "b"), twice.hikers());
    breaks(FindingCode.CARRIED_TWICE, trips, Splits.of("a", "p1", "p2*2"));
  }

  @Test
  void everyUnitAndEveryPart() {
    Trips trips =
        two().item("u", s -> s.count(3).mass(10)).item("s", s -> s.part("x", 10).part("y", 10));
    keeps(trips, Splits.of("a", "u*2", "s/x").and("b", "u", "s/y"));
    Finding units =
        breaks(FindingCode.NOT_CARRIED, trips, Splits.of("a", "u*2", "s/x").and("b", "s/y"));
    assertTrue(units.message().contains("1 of 3"), units.message());
    breaks(FindingCode.NOT_CARRIED, trips, Splits.of("a", "u*3", "s/x"));
    breaks(FindingCode.CARRIED_TWICE, trips, Splits.of("a", "u*3", "s/x", "s/y").and("b", "u"));
  }

  @Test
  void namesThatAreNotOnTheTrip() {
    Trips trips = two().pieces(10);
    breaks(FindingCode.UNKNOWN_HIKER, trips, Splits.of("a", "p1").and("nobody", "p1"));
    breaks(FindingCode.UNKNOWN_PIECE, trips, Splits.of("a", "p1", "nothing"));
    Trips parts = two().item("s", s -> s.part("x", 10));
    breaks(FindingCode.UNKNOWN_PIECE, parts, Splits.of("a", "s/x", "s"));
    breaks(FindingCode.UNKNOWN_PIECE, trips, Splits.of("a", "p1").and("b", "p1*0"));
    breaks(FindingCode.UNKNOWN_PIECE, trips, Splits.of("a", "p1").and("b", "p1*-1"));
  }

  /** Three days, two units a day of five: 2, 2, 1. */
  private static Trips meals() {
    return Trips.days(3)
        .hiker("a", h -> h.target(9000).leavesAfter(2))
        .hiker("b", h -> h.target(9000))
        .item("u", s -> s.count(5).mass(10).perDay(2, 1));
  }

  private static Splits fiveOpened() {
    return Splits.of("a", "u*3")
        .and("b", "u*2")
        .opened(1, "u", "a", 2)
        .opened(2, "u", "a", 1)
        .opened(2, "u", "b", 1);
  }

  @Test
  void theOpeningPlanAddsUpDayByDay() {
    keeps(meals(), fiveOpened().opened(3, "u", "b", 1));
    Finding less = breaks(FindingCode.OPENING_PLAN_WRONG, meals(), fiveOpened());
    assertEquals(List.of(3), less.days());
    assertEquals(List.of(PieceRef.of("u")), less.pieces());
  }

  @Test
  void onlyFromPacksThatHoldUnusedUnits() {
    Splits tooMany =
        Splits.of("a", "u*3")
            .and("b", "u*2")
            .opened(1, "u", "a", 2)
            .opened(2, "u", "a", 2)
            .handed(2, "a", "b", "u")
            .opened(3, "u", "b", 1);
    Finding found = breaks(FindingCode.OPENING_PLAN_WRONG, meals(), tooMany);
    assertEquals(List.of("a"), found.hikers());
    assertEquals(List.of(2), found.days());
  }

  @Test
  void notFromThoseWhoHaveLeft() {
    List<Finding> found = Judged.stops(meals(), fiveOpened().opened(3, "u", "a", 1));
    assertEquals(
        List.of(FindingCode.OPENING_PLAN_WRONG), found.stream().map(Finding::code).toList());
    assertEquals(List.of("a"), found.get(0).hikers());
  }

  @Test
  void planEntriesThatNameNothing() {
    Trips trips = two().pieces(10);
    Splits carried = Splits.of("a", "p1");
    breaks(FindingCode.OPENING_PLAN_WRONG, trips, carried.opened(1, "p1", "a", 1));
    for (Splits wrong :
        List.of(
            fiveOpened().opened(3, "u", "b", 1).opened(4, "u", "b", 1),
            fiveOpened().opened(3, "u", "b", 1).opened(0, "u", "b", 1),
            fiveOpened().opened(3, "u", "b", 1).opened(3, "nothing", "b", 1),
            fiveOpened().opened(3, "u", "b", 1).opened(3, "u", "nobody", 1),
            fiveOpened().opened(3, "u", "b", 1).opened(3, "u", "b", 0))) {
      breaks(FindingCode.OPENING_PLAN_WRONG, meals(), wrong);
    }
  }

  /** a leaves after day 1 of two. */
  private static Trips leaving() {
    return Trips.days(2)
        .hiker("a", h -> h.target(9000).leavesAfter(1))
        .hiker("b", h -> h.target(9000))
        .hiker("c", h -> h.target(9000).leavesAfter(1));
  }

  @Test
  void whatIsStillNeededIsHandedOn() {
    Trips trips = leaving().item("u", s -> s.count(3).mass(10));
    keeps(trips, Splits.of("a", "u*3").handed(1, "a", "b", "u", 3));
    Finding kept =
        breaks(
            FindingCode.CAMP_HANDOVER_WRONG,
            trips,
            Splits.of("a", "u*3").handed(1, "a", "b", "u", 2));
    assertEquals(List.of("a"), kept.hikers());
    assertEquals(List.of(1), kept.days());
  }

  @Test
  void whatIsNoLongerNeededGoesHome() {
    Trips trips = leaving().item("p", s -> s.mass(10).onDays(1));
    keeps(trips, Splits.of("a", "p"));
    breaks(FindingCode.CAMP_HANDOVER_WRONG, trips, Splits.of("a", "p").handed(1, "a", "b", "p"));
    Trips used = leaving().item("u", s -> s.count(1).mass(10).perDay(1, 1));
    keeps(used, Splits.of("a", "u").opened(1, "u", "a", 1));
    breaks(
        FindingCode.CAMP_HANDOVER_WRONG,
        used,
        Splits.of("a", "u").opened(1, "u", "a", 1).handed(1, "a", "b", "u"));
  }

  @Test
  void handoversThatCannotBe() {
    Trips trips = leaving().pieces(10);
    Splits stayer = Splits.of("b", "p1");
    keeps(trips, Splits.of("b", "p1"));
    breaks(FindingCode.CAMP_HANDOVER_WRONG, trips, stayer.handed(1, "b", "b", "p1"));
    for (Splits more :
        List.of(
            handedOn().handed(1, "a", "b", "p1"),
            handedOn().handed(0, "a", "b", "p1"),
            handedOn().handed(2, "a", "b", "p1"),
            handedOn().handed(1, "a", "c", "p1"),
            handedOn().handed(1, "c", "b", "p1"),
            handedOn().handed(1, "a", "b", "p1", 0),
            handedOn().handed(1, "a", "b", "p1", -1),
            handedOn().handed(1, "a", "b", "nothing"),
            handedOn().handed(1, "nobody", "b", "p1"),
            handedOn().handed(1, "a", "nobody", "p1"))) {
      breaks(FindingCode.CAMP_HANDOVER_WRONG, trips, more);
    }
  }

  private static Splits handedOn() {
    return Splits.of("a", "p1").handed(1, "a", "b", "p1");
  }
}
