package dev.faircarry.check;

import static dev.faircarry.check.Judged.breaks;
import static dev.faircarry.check.Judged.keeps;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.faircarry.fixture.HikerOf.Thing;
import dev.faircarry.fixture.Splits;
import dev.faircarry.fixture.Trips;
import dev.faircarry.trip.Stow;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Packs, containers and numbers of pieces, each exactly full and one too much. */
class RoomTest {

  private static Trips pack(int days, long milliliters, Thing... kit) {
    return Trips.days(days)
        .hiker(
            "a",
            h -> {
              h.target(9000).pack(1000, milliliters);
              for (Thing thing : kit) {
                h.kit(thing);
              }
              return h;
            })
        .hiker("b", h -> h.target(9000));
  }

  private static Splits all() {
    return Splits.of("a", "p");
  }

  @Test
  void ownPackedKitTakesRoom() {
    Thing[] kit = {
      new Thing("in", 1).volume(300),
      new Thing("out", 1).volume(500).outside(),
      new Thing("on", 1).volume(500).worn()
    };
    keeps(pack(1, 1000, kit).item("p", s -> s.mass(1).volume(700)), all());
    Finding found =
        breaks(
            FindingCode.NO_ROOM, pack(1, 1000, kit).item("p", s -> s.mass(1).volume(701)), all());
    assertEquals(List.of("a"), found.hikers());
    assertEquals(List.of(1), found.days());
  }

  @Test
  void ownKitThatOverfillsLeavesNoRoomButIsNoBreach() {
    Trips trips = pack(1, 1000, new Thing("in", 1).volume(1001));
    Verdict verdict = Judged.verdict(trips.item("p", s -> s.mass(1)), all());
    assertEquals(
        List.of(FindingCode.OWN_KIT_OVERFILLS),
        verdict.findings().stream().map(Finding::code).toList());
    assertEquals(true, verdict.keepsRules());
    breaks(FindingCode.NO_ROOM, trips.item("q", s -> s.mass(1).volume(1)), all().and("a", "q"));
    Trips full = pack(1, 1000, new Thing("in", 1).volume(1000));
    assertEquals(List.of(), Judged.verdict(full, Splits.of("a")).findings());
  }

  @Test
  void outsideTakesNoRoomAndNoVolumeMeansNone() {
    keeps(pack(1, 0).item("p", s -> s.mass(1).volume(700).outside()), all());
    keeps(pack(1, 0).item("p", s -> s.mass(1)), all());
    Trips parts =
        pack(1, 10)
            .item(
                "s",
                s ->
                    s.part("x", 1, Optional.of(Trips.milliliters(99)), Stow.OUTSIDE)
                        .part("y", 1, 10));
    keeps(parts, Splits.of("a", "s/x", "s/y"));
  }

  @Test
  void unitsUsedUpGiveRoomBack() {
    Trips trips =
        pack(2, 10)
            .item("u", s -> s.count(2).mass(1).volume(5).perDay(1, 1))
            .item("q", s -> s.mass(1).volume(5).onDays(2));
    keeps(trips, Splits.of("a", "u*2", "q").opened(1, "u", "a", 1).opened(2, "u", "a", 1));
    Splits kept =
        Splits.of("a", "u", "q").and("b", "u").opened(1, "u", "b", 1).opened(2, "u", "a", 1);
    keeps(trips, kept);
    Trips tight =
        pack(2, 9)
            .item("u", s -> s.count(2).mass(1).volume(5).perDay(1, 1))
            .item("q", s -> s.mass(1).volume(5).onDays(2));
    assertEquals(List.of(2), breaks(FindingCode.NO_ROOM, tight, kept).days());
  }

  @Test
  void evenlyKeepsItsVolume() {
    Trips trips = pack(3, 9).item("p", s -> s.mass(30).volume(10).evenly(0));
    assertEquals(List.of(1, 2, 3), breaks(FindingCode.NO_ROOM, trips, all()).days());
  }

  @Test
  void contentsTravelInsideAContainerThatFits() {
    Trips trips =
        pack(1, 20)
            .item("box", s -> s.mass(1).volume(20).contains("food", 11))
            .item("u", s -> s.count(2).mass(1).volume(6).goesInto("food"));
    breaks(FindingCode.NO_CONTAINER, trips, Splits.of("a", "box", "u*2"));
    breaks(FindingCode.NO_CONTAINER, trips, Splits.of("a", "box", "u").and("b", "u"));
    Trips larger =
        pack(1, 20)
            .item("box", s -> s.mass(1).volume(20).contains("food", 12))
            .item("u", s -> s.count(2).mass(1).volume(6).goesInto("food"));
    keeps(larger, Splits.of("a", "box", "u*2"));
  }

  @Test
  void kitContainersCountTooAndAddUp() {
    Trips trips =
        pack(1, 0, new Thing("tin", 1).contains("food", 5))
            .item("box", s -> s.mass(1).contains("food", 6))
            .item("u", s -> s.count(1).mass(1).volume(11).goesInto("food"));
    keeps(trips, Splits.of("a", "box", "u"));
    breaks(FindingCode.NO_CONTAINER, trips, Splits.of("a", "u").and("b", "box"));
    breaks(FindingCode.NO_CONTAINER, trips, Splits.of("b", "box", "u"));
  }

  @Test
  void anotherKindOfContainerDoesNotDo() {
    Trips trips =
        pack(1, 0, new Thing("tin", 1).contains("food", 5))
            .item("flask", s -> s.mass(1).contains("fuel", 9))
            .item("p", s -> s.mass(1).goesInto("fuel"));
    keeps(trips, Splits.of("b", "flask", "p"));
    breaks(FindingCode.NO_CONTAINER, trips, Splits.of("a", "p").and("b", "flask"));
  }

  /** 12 mL for 11, or 6 for none at all. */
  @Test
  void whatDoesNotFitIsNoQuestionOfHowMuchWhereThereIsNoContainer() {
    Trips trips =
        pack(1, 20)
            .item("box", s -> s.mass(1).contains("food", 11))
            .item("u", s -> s.count(2).mass(1).volume(6).goesInto("food"));
    String words = " carries things that go into a container of kind “food” on day 1, ";
    assertEquals(
        "a" + words + "1 mL more than fit into the ones held.",
        breaks(FindingCode.NO_CONTAINER, trips, Splits.of("a", "box", "u*2")).message());
    assertEquals(
        "b" + words + "and holds none.",
        breaks(FindingCode.NO_CONTAINER, trips, Splits.of("a", "box", "u").and("b", "u"))
            .message());
  }

  @Test
  void onePieceIsOnePiece() {
    Trips none =
        Trips.days(1).hiker("b", h -> h.target(9000).maxPieces(0)).item("s", s -> s.mass(1));
    assertEquals(
        "b takes on 1 piece at departure; the limit is 0.",
        breaks(FindingCode.TOO_MANY_PIECES, none, Splits.of("b", "s")).message());
  }

  @Test
  void theContainerMustBeThereThatMorning() {
    Trips trips =
        pack(2, 0)
            .item("box", s -> s.mass(1).contains("food", 9).onDays(1))
            .item("p", s -> s.mass(1).goesInto("food"));
    assertEquals(
        List.of(2), breaks(FindingCode.NO_CONTAINER, trips, Splits.of("a", "box", "p")).days());
    Trips used =
        pack(2, 0)
            .item("box", s -> s.mass(1).contains("food", 9).onDays(1))
            .item("u", s -> s.count(1).mass(1).goesInto("food").perDay(1, 1));
    keeps(used, Splits.of("a", "box", "u").opened(1, "u", "a", 1));
  }

  @Test
  void piecesAreCountedAtDeparture() {
    Trips trips =
        Trips.days(2)
            .hiker("a", h -> h.target(9000).leavesAfter(1))
            .hiker("b", h -> h.target(9000).maxPieces(3))
            .item("u", s -> s.count(2).mass(1))
            .item("s", s -> s.part("x", 1).part("y", 1));
    Splits later = Splits.of("a", "u").and("b", "u", "s/x", "s/y").handed(1, "a", "b", "u");
    keeps(trips, later);
    assertEquals(
        List.of("b"),
        breaks(FindingCode.TOO_MANY_PIECES, trips, Splits.of("b", "u*2", "s/x", "s/y")).hikers());
  }
}
