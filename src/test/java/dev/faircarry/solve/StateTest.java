package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.fixture.Trips;
import org.junit.jupiter.api.Test;

/** Who holds what, put and taken one by one, against sums worked out by hand. */
class StateTest {
  private static Trips frontAndBack() {
    return Trips.days(1)
        .hiker("a", h -> h.target(1000).party("front"))
        .hiker("b", h -> h.target(1000).party("front"))
        .hiker("c", h -> h.target(1000).party("back"));
  }

  /** Only when both parts are in front does the shelter count there. */
  @Test
  void partsCountOnceAllAreInTheParty() {
    State state =
        new State(
            ModelBuilder.of(
                frontAndBack()
                    .item("shelter", s -> s.part("fly", 2).part("pegs", 1).covers("shelter"))
                    .partyHas("shelter", 1, "front")
                    .trip()));
    assertEquals(1, state.broken());
    state.put(0, 0);
    assertEquals(1, state.broken());
    state.put(1, 1);
    assertEquals(0, state.broken());
    state.take(0);
    assertEquals(1, state.broken());
    state.put(0, 2);
    assertEquals(1, state.broken());
    state.take(0);
    state.put(0, 1);
    assertEquals(0, state.broken());
  }

  @Test
  void otherThingsDoNotCountForANeed() {
    State state =
        new State(
            ModelBuilder.of(
                frontAndBack()
                    .item("rope", s -> s.part("one", 2).part("two", 2))
                    .item("lamp", s -> s.mass(1).covers("light"))
                    .partyHas("light", 1, "back")
                    .trip()));
    state.put(0, 2);
    state.put(1, 2);
    assertEquals(1, state.broken());
    state.put(2, 2);
    assertEquals(0, state.broken());
  }

  @Test
  void whatIsTakenIsWithNobody() {
    State state = new State(ModelBuilder.of(Trips.targets(1000, 2000).pieces(500, 300).trip()));
    assertFalse(state.held(0));
    state.put(0, 0);
    state.put(1, 1);
    int[][] both = state.routes();
    // 500 of 1000 and 300 of 2000 grams are 500 and 150 thousandths, in steps of 5.
    assertArrayEquals(new int[] {100, 30}, state.list());
    state.take(0);
    assertFalse(state.held(0));
    assertEquals(State.NOBODY, state.holder[0][0]);
    assertArrayEquals(new int[] {30, 0}, state.list());
    state.restore(both);
    assertTrue(state.held(0));
    assertArrayEquals(new int[] {100, 30}, state.list());
    State empty = new State(state.m);
    int[][] nothing = empty.routes();
    state.restore(nothing);
    assertFalse(state.held(0));
    assertFalse(state.held(1));
    assertArrayEquals(new int[] {0, 0}, state.list());
  }

  /** The list has the mornings of those present only: a on day 1, b on both. */
  @Test
  void whoHasLeftHasNoMornings() {
    State state =
        new State(
            ModelBuilder.of(
                Trips.days(2)
                    .hiker("a", h -> h.target(1000).kit("quilt", 300).leavesAfter(1))
                    .hiker("b", h -> h.target(1000).kit("quilt", 200))
                    .trip()));
    assertArrayEquals(new int[] {60, 40, 40}, state.list());
  }

  /** Caps of 800 grams at a target of 1000: each gram above is a thousandth. */
  @Test
  void excessIsAddedUpAndTakenOff() {
    State state =
        new State(
            ModelBuilder.of(
                Trips.days(1)
                    .hiker("a", h -> h.target(1000).kit("quilt", 850).capLoad(800))
                    .hiker("b", h -> h.target(1000).kit("quilt", 810).capLoad(800))
                    .pieces(20, 3)
                    .trip()));
    assertEquals(50 + 10, state.totalExcess);
    state.put(0, 0);
    assertEquals(70 + 10, state.totalExcess);
    state.put(1, 1);
    assertEquals(70 + 13, state.totalExcess);
    state.take(0);
    assertEquals(50 + 13, state.totalExcess);
    state.put(0, 1);
    assertEquals(50 + 33, state.totalExcess);
  }

  /** Rooms, pieces, containers and needs are counted one beside the other. */
  @Test
  void whatIsBrokenAddsUp() {
    State state =
        new State(
            ModelBuilder.of(
                Trips.days(1)
                    .hiker("a", h -> h.target(1000).pack(0, 5).maxPieces(2).party("front"))
                    .hiker("b", h -> h.target(1000).party("back"))
                    .item("tent", s -> s.mass(1).volume(6))
                    .item("food", s -> s.mass(1).volume(3).goesInto("food"))
                    .item("lamp", s -> s.mass(1).covers("light"))
                    .partyHas("light", 1, "back")
                    .trip()));
    assertEquals(1, state.broken());
    state.put(0, 0);
    assertEquals(1 + 1, state.broken());
    state.put(1, 0);
    assertEquals(1 + 1 + 1, state.broken());
    // A third piece with a, and still no light with b.
    state.put(2, 0);
    assertEquals(1 + 1 + 1 + 1, state.broken());
    state.take(2);
    state.put(2, 1);
    assertEquals(1 + 1, state.broken());
  }
}
