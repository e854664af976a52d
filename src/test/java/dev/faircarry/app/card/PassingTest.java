package dev.faircarry.app.card;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.faircarry.fixture.Splits;
import dev.faircarry.fixture.Trips;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** From where things are to who carries them. */
class PassingTest {
  private static final Trip TRIP =
      Trips.days(2)
          .hiker("a", h -> h.target(9000))
          .hiker("b", h -> h.target(9000))
          .hiker("c", h -> h.target(9000))
          .item("tarp", i -> i.mass(500).owner("a"))
          .item("meal", i -> i.mass(100).count(6).owner("c"))
          .item("rope", i -> i.mass(900))
          .trip();

  private static Split meals(int a, int b, int c) {
    PieceRef meal = PieceRef.item("meal");
    return new Split(
        List.of(new Carry("a", meal, a), new Carry("b", meal, b), new Carry("c", meal, c)),
        List.of(),
        List.of());
  }

  private static List<String> words(Split now, Optional<Split> earlier) {
    return Passing.of(TRIP, now, earlier).stream()
        .map(p -> p.units() + " " + p.piece() + " " + p.from() + ">" + p.to() + " " + p.why())
        .toList();
  }

  @Test
  void thingsComeFromTheirOwnersFirst() {
    Split now = Splits.of("b", "tarp", "rope").split();
    assertEquals(List.of("1 tarp a>b OWNED"), words(now, Optional.empty()));
  }

  @Test
  void onesOwnThingsComeFromNobody() {
    assertEquals(List.of(), words(Splits.of("a", "tarp").split(), Optional.empty()));
  }

  @Test
  void whoHadItBeforeGivesIt() {
    Split before = Splits.of("c", "tarp", "rope").split();
    Split now = Splits.of("b", "tarp").and("c", "rope").split();
    assertEquals(List.of("1 tarp c>b CARRIED_BEFORE"), words(now, Optional.of(before)));
  }

  @Test
  void unitsPassFromWhoHasTooManyToWhoHasTooFew() {
    // a gives 2: one to b, one to c; c keeps what it had.
    assertEquals(
        List.of("1 meal a>b CARRIED_BEFORE", "1 meal a>c CARRIED_BEFORE"),
        words(meals(1, 2, 3), Optional.of(meals(3, 1, 2))));
  }

  @Test
  void whatWasNotThereBeforeComesFromItsOwner() {
    // Two of the six were not divided before; c owns all of them.
    assertEquals(List.of("2 meal c>b OWNED"), words(meals(2, 4, 0), Optional.of(meals(2, 2, 0))));
  }
}
