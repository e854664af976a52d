package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.fixture.Trips;
import dev.faircarry.oracle.BruteForce;
import dev.faircarry.oracle.TripGenerator;
import dev.faircarry.oracle.Value;
import dev.faircarry.split.Advice;
import dev.faircarry.split.Binding;
import dev.faircarry.split.Demand;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import dev.faircarry.trip.change.Changed;
import dev.faircarry.trip.change.TripChanging;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What binds the worst-off morning, and what leaving one thing out gains. Steps of 1/1000. */
class AdviceSearchTest {
  private static final long EFFORT = 3_000_000;
  private static final long MOST_SPLITS = 20_000;

  private static Advice advice(Trip trip) {
    Value best = BruteForce.answer(trip, MOST_SPLITS).orElseThrow().best().orElseThrow();
    return AdviceSearch.of(trip, best.steps().get(0), EFFORT, Watch.NONE);
  }

  /** 5 kg of 10 kg without any shared piece; 1 kg for b can be 0.1 at most. */
  @Test
  void ownKit() {
    Trip trip =
        Trips.days(1)
            .grain(1)
            .hiker("a", h -> h.target(10_000).kit("Stone", 5000))
            .hiker("b", h -> h.target(10_000))
            .pieces(1000)
            .trip();
    assertEquals(new Binding.OwnKit("a", 1, 500), advice(trip).binding());
    assertEquals(List.of(), advice(trip).lifted());
  }

  /** Three pieces of 1 kg for three hikers of 10 kg: 0.1 each; a step less leaves 0.99 kg each. */
  @Test
  void sheerTotal() {
    Trip trip = Trips.targets(10_000, 10_000, 10_000).grain(1).pieces(1000, 1000, 1000).trip();
    assertEquals(new Binding.SheerTotal(1, 3_000_000, 2_970_000), advice(trip).binding());
  }

  /** 4 kg in one piece are 0.4 of 10 kg, whoever takes it; the other piece goes elsewhere. */
  @Test
  void oneLargePiece() {
    Trip trip = Trips.targets(10_000, 10_000).grain(1).pieces(4000, 1000).trip();
    Advice advice = advice(trip);
    assertEquals(new Binding.LargePiece(List.of(PieceRef.of("p1")), 1, 400), advice.binding());
    assertEquals(
        List.of(new Advice.Lifted(Optional.of(PieceRef.of("p1")), Optional.empty(), 100, true)),
        advice.lifted());
  }

  /** Two pieces of 2 kg kept in one pack are one large piece. */
  @Test
  void whatIsKeptTogetherCountsAsOne() {
    Trip trip =
        Trips.targets(10_000, 10_000).grain(1).pieces(2000, 2000).together("p1", "p2").trip();
    Advice advice = advice(trip);
    assertEquals(
        new Binding.LargePiece(List.of(PieceRef.of("p1"), PieceRef.of("p2")), 1, 400),
        advice.binding());
    assertEquals(200, advice.lifted().get(0).worstSteps());
  }

  /** Both pieces are pinned to a, 0.4; without either pin a has one of them. */
  @Test
  void oneRule() {
    Trip trip =
        Trips.targets(10_000, 10_000).grain(1).pieces(2000, 2000).pinned("a", "p1", "p2").trip();
    String rule = trip.rules().get(0).id();
    Advice advice = advice(trip);
    assertEquals(new Binding.OneDemand(new Demand.OfRule(rule), 200), advice.binding());
  }

  /** Of three pieces of 3 kg somebody has two: 0.6, though 0.45 would be the mean. */
  @Test
  void noSingleCause() {
    Trip trip = Trips.targets(10_000, 10_000).grain(1).pieces(3000, 3000, 3000).trip();
    Advice advice = advice(trip);
    assertEquals(new Binding.Grain(), advice.binding());
    assertEquals(300, advice.lifted().get(0).worstSteps());
  }

  /** Every number against trying every split without the thing. */
  @Test
  void everyNumberIsWhatBruteForceFinds() {
    int asked = 0;
    for (long seed = 0; seed < 120; seed++) {
      Trip trip = TripGenerator.trip(seed, TripGenerator.Shape.of(3, 2, 5));
      Optional<Value> best = BruteForce.answer(trip, MOST_SPLITS).flatMap(BruteForce.Answer::best);
      if (best.isEmpty()) {
        continue;
      }
      Advice advice = AdviceSearch.of(trip, best.get().steps().get(0), EFFORT, Watch.NONE);
      for (Advice.Lifted lifted : advice.lifted()) {
        Optional<Value> without = without(trip, lifted);
        if (without.isPresent()) {
          asked++;
          assertTrue(lifted.proved(), "seed " + seed + ": " + lifted);
          assertEquals(without.get().steps().get(0), lifted.worstSteps(), "seed " + seed);
        }
      }
    }
    assertTrue(asked > 100, "only " + asked + " numbers compared");
  }

  /** Parts are passed over: an item without one of its parts is no trip of its own. */
  private static Optional<Value> without(Trip trip, Advice.Lifted lifted) {
    if (lifted.demand().isPresent()) {
      Demand demand = lifted.demand().get();
      return BruteForce.answer(trip, MOST_SPLITS, d -> !d.equals(demand), Optional.empty())
          .flatMap(BruteForce.Answer::best);
    }
    PieceRef piece = lifted.piece().orElseThrow();
    boolean named = trip.rules().stream().anyMatch(rule -> rule instanceof Rule.PartyHas);
    if (piece.part().isPresent() || named) {
      return Optional.empty();
    }
    Changed changed =
        TripChanging.apply(trip, List.of(new Change.ItemGone(piece, OptionalInt.empty())));
    return changed instanceof Changed.Made made
        ? BruteForce.answer(made.trip(), MOST_SPLITS).flatMap(BruteForce.Answer::best)
        : Optional.empty();
  }
}
