package dev.faircarry.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.faircarry.fixture.Trips;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.List;
import org.junit.jupiter.api.Test;

class TakersTest {
  private static Carry carry(String hiker, String piece) {
    return new Carry(hiker, PieceRef.of(piece), 1);
  }

  @Test
  void everyHikerIsRankedOrExcludedWithReasons() {
    // p4 is with nobody. With it a has 9 kg, b 7, d 6 of 10: d first, then b, then a; c is barred
    // and has as many pieces as allowed.
    Trip trip =
        Trips.days(1)
            .hiker("a", h -> h.target(10_000))
            .hiker("b", h -> h.target(10_000))
            .hiker("c", h -> h.target(10_000).maxPieces(1))
            .hiker("d", h -> h.target(10_000))
            .pieces(8000, 6000, 1000, 1000, 5000)
            .barred(List.of("c"), "p4")
            .trip();
    Split split =
        new Split(
            List.of(carry("a", "p1"), carry("b", "p2"), carry("c", "p3"), carry("d", "p5")),
            List.of(),
            List.of());
    List<Takers.Taker> takers = Takers.of(trip, split, PieceRef.item("p4"), 1);
    assertEquals(
        List.of("d 1", "b 2", "a 3", "c 0"),
        takers.stream().map(t -> t.hiker() + " " + t.rank()).toList());
    assertEquals(
        List.of(FindingCode.BARRED, FindingCode.TOO_MANY_PIECES),
        takers.get(3).reasons().stream().map(Finding::code).sorted().toList());
    assertEquals(180L, takers.get(2).verdict().steps().get(0));
  }

  @Test
  void whoLeavesEarlyHandsItOn() {
    Trip trip =
        Trips.days(2)
            .hiker("a", h -> h.target(10_000).leavesAfter(1))
            .hiker("b", h -> h.target(10_000))
            .pieces(1000)
            .trip();
    List<Takers.Taker> takers =
        Takers.of(trip, new Split(List.of(), List.of(), List.of()), PieceRef.item("p1"), 1);
    // Mornings: a 1, b 1, b 2. Taken by a the list is 20, 20, 0; taken by b it is the same.
    assertEquals(List.of(1, 2), takers.stream().map(Takers.Taker::rank).toList());
    assertEquals(List.of(20L, 20L, 0L), takers.get(0).verdict().steps());
    assertEquals(1, takers.get(0).split().handoversAtCamp().size());
  }
}
