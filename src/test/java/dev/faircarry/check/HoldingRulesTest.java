package dev.faircarry.check;

import static dev.faircarry.check.Judged.breaks;
import static dev.faircarry.check.Judged.keeps;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.faircarry.fixture.Splits;
import dev.faircarry.fixture.Trips;
import dev.faircarry.trip.PieceRef;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Who may hold what: each rule broken alone, and kept by a neighbouring split. */
class HoldingRulesTest {

  /** Three hikers and three days; a leaves after day 1. */
  private static Trips leaving() {
    return Trips.days(3)
        .hiker("a", h -> h.target(9000).leavesAfter(1))
        .hiker("b", h -> h.target(9000))
        .hiker("c", h -> h.target(9000));
  }

  private static Trips oneDay() {
    return Trips.targets(9000, 9000, 9000);
  }

  @Test
  void pinned() {
    Trips trips = oneDay().pieces(100, 100).pinned("a", "p1");
    keeps(trips, Splits.of("a", "p1").and("b", "p2"));
    Finding found =
        breaks(FindingCode.PINNED_ELSEWHERE, trips, Splits.of("b", "p1").and("a", "p2"));
    assertEquals(List.of("b"), found.hikers());
    assertEquals(List.of(PieceRef.of("p1")), found.pieces());
    assertEquals(List.of("r1"), found.rules());
    assertEquals(List.of(1), found.days());
  }

  @Test
  void pinnedEndsWhenTheHikerHasLeft() {
    Trips trips = leaving().pieces(100).pinned("a", "p1");
    keeps(trips, Splits.of("a", "p1").handed(1, "a", "c", "p1"));
    Finding found = breaks(FindingCode.PINNED_ELSEWHERE, trips, Splits.of("c", "p1"));
    assertEquals(List.of(1), found.days());
  }

  @Test
  void pinnedNamesEveryUnitAndEveryPart() {
    Trips trips =
        oneDay()
            .item("u", s -> s.count(3).mass(10))
            .item("s", s -> s.part("x", 10).part("y", 10))
            .pinned("a", "u", "s");
    keeps(trips, Splits.of("a", "u*3", "s/x", "s/y"));
    breaks(FindingCode.PINNED_ELSEWHERE, trips, Splits.of("a", "u*2", "s/x", "s/y").and("c", "u"));
    breaks(FindingCode.PINNED_ELSEWHERE, trips, Splits.of("a", "u*3", "s/x").and("c", "s/y"));
  }

  @Test
  void only() {
    Trips trips = oneDay().pieces(100).only(List.of("a", "b"), "p1");
    keeps(trips, Splits.of("a", "p1"));
    keeps(trips, Splits.of("b", "p1"));
    Finding found = breaks(FindingCode.NOT_ALLOWED, trips, Splits.of("c", "p1"));
    assertEquals(List.of("c"), found.hikers());
    assertEquals(List.of("r1"), found.rules());
  }

  @Test
  void onlyBindsWhileOneOfThemIsThere() {
    Splits toC = Splits.of("a", "p1").handed(1, "a", "c", "p1");
    keeps(leaving().pieces(100).only(List.of("a"), "p1"), toC);
    Trips both = leaving().pieces(100).only(List.of("a", "b"), "p1");
    keeps(both, Splits.of("a", "p1").handed(1, "a", "b", "p1"));
    assertEquals(List.of(2, 3), breaks(FindingCode.NOT_ALLOWED, both, toC).days());
  }

  @Test
  void barred() {
    Trips trips = oneDay().pieces(100).barred(List.of("a", "b"), "p1");
    keeps(trips, Splits.of("c", "p1"));
    breaks(FindingCode.BARRED, trips, Splits.of("a", "p1"));
    assertEquals(List.of("b"), breaks(FindingCode.BARRED, trips, Splits.of("b", "p1")).hikers());
  }

  @Test
  void barredBindsInEveryStage() {
    Trips trips = leaving().pieces(100).barred(List.of("b"), "p1");
    keeps(trips, Splits.of("a", "p1").handed(1, "a", "c", "p1"));
    Splits toB = Splits.of("a", "p1").handed(1, "a", "b", "p1");
    assertEquals(List.of(2, 3), breaks(FindingCode.BARRED, trips, toB).days());
  }

  @Test
  void barredLooksOnlyAtUnusedUnits() {
    Trips trips =
        leaving().item("u", s -> s.count(2).mass(10).perDay(1, 1)).barred(List.of("b"), "u");
    Splits used = Splits.of("c", "u*2").opened(1, "u", "c", 1).opened(2, "u", "c", 1);
    keeps(trips, used);
    Splits held = Splits.of("c", "u").and("b", "u").opened(1, "u", "b", 1).opened(2, "u", "c", 1);
    assertEquals(List.of(1), breaks(FindingCode.BARRED, trips, held).days());
  }

  @Test
  void together() {
    Trips trips = oneDay().pieces(100, 100).together("p1", "p2");
    keeps(trips, Splits.of("b", "p1", "p2"));
    Finding found = breaks(FindingCode.NOT_TOGETHER, trips, Splits.of("a", "p1").and("b", "p2"));
    assertEquals(List.of("a", "b"), found.hikers());
    assertEquals(List.of("r1"), found.rules());
  }

  @Test
  void togetherInEveryStage() {
    Trips trips = leaving().pieces(100, 100).together("p1", "p2");
    Splits all = Splits.of("a", "p1", "p2");
    keeps(trips, all.handed(1, "a", "b", "p1").handed(1, "a", "b", "p2"));
    Splits apart = Splits.of("a", "p1", "p2").handed(1, "a", "b", "p1").handed(1, "a", "c", "p2");
    assertEquals(List.of(2, 3), breaks(FindingCode.NOT_TOGETHER, trips, apart).days());
  }

  @Test
  void togetherForgetsWhatIsNoLongerNeededButNotWhatIsNotYetThere() {
    Trips first =
        leaving()
            .item("p", s -> s.mass(10).onDays(1))
            .item("q", s -> s.mass(10))
            .item("r", s -> s.mass(10))
            .together("p", "q", "r");
    keeps(first, Splits.of("a", "p", "q", "r").handed(1, "a", "b", "q").handed(1, "a", "b", "r"));
    Trips later =
        leaving()
            .item("p", s -> s.mass(10).onDays(3))
            .item("q", s -> s.mass(10))
            .together("p", "q");
    keeps(later, Splits.of("b", "p", "q"));
    assertEquals(
        List.of(1, 2, 3),
        breaks(FindingCode.NOT_TOGETHER, later, Splits.of("b", "p").and("c", "q")).days());
  }

  @Test
  void togetherMeansAllUnits() {
    Trips trips = oneDay().item("u", s -> s.count(3).mass(10)).together("u");
    keeps(trips, Splits.of("c", "u*3"));
    breaks(FindingCode.NOT_TOGETHER, trips, Splits.of("c", "u*2").and("a", "u"));
  }

  @Test
  void apart() {
    Trips trips = oneDay().pieces(100, 100, 100).apart("p1", "p2");
    keeps(trips, Splits.of("a", "p1", "p3").and("b", "p2"));
    Finding found = breaks(FindingCode.NOT_APART, trips, Splits.of("a", "p1", "p2", "p3"));
    assertEquals(List.of(PieceRef.of("p1"), PieceRef.of("p2")), found.pieces());
    assertEquals(List.of("a"), found.hikers());
  }

  @Test
  void apartInEveryStage() {
    Trips trips = leaving().pieces(100, 100).apart("p1", "p2");
    keeps(trips, Splits.of("a", "p1").and("b", "p2").handed(1, "a", "c", "p1"));
    Splits toB = Splits.of("a", "p1").and("b", "p2").handed(1, "a", "b", "p1");
    assertEquals(List.of(2, 3), breaks(FindingCode.NOT_APART, trips, toB).days());
  }

  @Test
  void unitsAndPartsOfOneReferenceMayShareAPack() {
    Trips trips =
        oneDay()
            .item("u", s -> s.count(2).mass(10))
            .item("s", s -> s.part("x", 10).part("y", 10))
            .apart("u", "s");
    keeps(trips, Splits.of("a", "u*2").and("b", "s/x", "s/y"));
    breaks(FindingCode.NOT_APART, trips, Splits.of("a", "u*2", "s/x").and("b", "s/y"));
    Trips parts = oneDay().item("s", s -> s.part("x", 10).part("y", 10)).apart("s/x", "s/y");
    breaks(FindingCode.NOT_APART, parts, Splits.of("a", "s/x", "s/y"));
  }

  @Test
  void minorsHoldNoFlameAndNoFuel() {
    for (String need : List.of("flame", "fuel")) {
      Trips trips =
          Trips.days(1)
              .hiker("a", h -> h.target(9000).minor())
              .hiker("b", h -> h.target(9000))
              .item("p", s -> s.mass(10).covers("light", need));
      keeps(trips, Splits.of("b", "p"));
      Splits minor = Splits.of("a", "p");
      assertEquals(
          List.of("a"), breaks(FindingCode.MINOR_CARRIES_FLAME_OR_FUEL, trips, minor).hikers());
      keeps(trips.minorsMayCarryFlameAndFuel(), minor);
    }
  }

  @Test
  void minorsInEveryStage() {
    Trips trips =
        Trips.days(2)
            .hiker("a", h -> h.target(9000).leavesAfter(1))
            .hiker("b", h -> h.target(9000).minor())
            .hiker("c", h -> h.target(9000))
            .item("p", s -> s.part("x", 10).part("y", 10).covers("fuel"));
    Splits fine = Splits.of("a", "p/x").and("c", "p/y").handed(1, "a", "c", "p/x");
    keeps(trips, fine);
    Splits toMinor = Splits.of("a", "p/x").and("c", "p/y").handed(1, "a", "b", "p/x");
    assertEquals(
        List.of(2), breaks(FindingCode.MINOR_CARRIES_FLAME_OR_FUEL, trips, toMinor).days());
  }

  @Test
  void daysThatDoNotFollowEachOtherAreSaidOneByOne() {
    assertEquals("on day 4", Words.days(List.of(4)));
    assertEquals("on days 2 to 4", Words.days(List.of(2, 3, 4)));
    assertEquals("on days 1, 3 and 4", Words.days(List.of(1, 3, 4)));
  }
}
