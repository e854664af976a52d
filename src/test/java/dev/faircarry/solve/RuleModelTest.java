package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.SplitCheck;
import dev.faircarry.check.Verdict;
import dev.faircarry.fixture.ItemOf;
import dev.faircarry.fixture.Splits;
import dev.faircarry.fixture.Trips;
import dev.faircarry.oracle.BruteForce;
import dev.faircarry.oracle.Movement;
import dev.faircarry.oracle.RandomSplits;
import dev.faircarry.oracle.TripGenerator;
import dev.faircarry.split.Progress;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * The hard rules as a constraint model: a split is found where trying everything finds one, and its
 * rules are kept; within a number of handovers too.
 */
class RuleModelTest {
  private static final long MOST_SPLITS = 20_000;
  private static final long NODES = 1_000_000;

  private static final List<TripGenerator.Shape> SHAPES =
      List.of(TripGenerator.Shape.of(3, 3, 6), TripGenerator.Shape.of(4, 1, 6));

  private static Effort effort() {
    return new Effort(Long.MAX_VALUE / 4, Watch.NONE);
  }

  private static void keepsRules(String where, Trip trip, State state) {
    Verdict verdict = SplitCheck.verdict(trip, SplitOf.write(state.m, state.holder));
    assertTrue(verdict.keepsRules(), where + ": " + verdict.findings());
    assertEquals(0, state.broken(), where);
  }

  @Test
  void thereIsASplitWhereTryingEverythingFindsOne() {
    int possible = 0;
    int impossible = 0;
    for (long seed = 0; seed < 300; seed++) {
      String where = "seed " + seed;
      Trip trip = TripGenerator.trip(seed, SHAPES.get((int) (seed % SHAPES.size())));
      Optional<BruteForce.Answer> all = BruteForce.answer(trip, MOST_SPLITS);
      if (all.isEmpty()) {
        continue;
      }
      State state = new State(ModelBuilder.of(trip));
      RuleModel.Verdict found = RuleModel.find(state, NODES, effort());
      if (all.get().possible()) {
        assertEquals(RuleModel.Verdict.FOUND, found, where);
        keepsRules(where, trip, state);
        possible++;
      } else {
        assertEquals(RuleModel.Verdict.NONE, found, where);
        impossible++;
      }
    }
    assertTrue(possible > 100 && impossible > 40, possible + " possible, " + impossible + " not");
  }

  @Test
  void withinAsFewHandoversAsTryingEverythingNeeds() {
    int compared = 0;
    int forced = 0;
    for (long seed = 0; seed < 150; seed++) {
      Trip trip = TripGenerator.trip(seed, SHAPES.get((int) (seed % SHAPES.size())));
      Split earlier = RandomSplits.sound(trip, new SplittableRandom(seed));
      Optional<BruteForce.Answer> all =
          BruteForce.answer(trip, MOST_SPLITS, demand -> true, Optional.of(earlier));
      if (all.isEmpty() || !all.get().possible()) {
        continue;
      }
      int least = all.get().byHandovers().firstKey();
      Model model = ModelBuilder.of(trip, demand -> true, earlier, Set.of());
      Moves moves = new Moves(model, earlier);
      for (int most = 0; most <= least; most++) {
        String where = "seed " + seed + " within " + most;
        State state = new State(model);
        RuleModel.Verdict found =
            RuleModel.find(state, Optional.of(Budget.of(moves, most)), NODES, effort());
        if (most < least) {
          assertEquals(RuleModel.Verdict.NONE, found, where);
        } else {
          assertEquals(RuleModel.Verdict.FOUND, found, where);
          keepsRules(where, trip, state);
          Split split = SplitOf.write(model, state.holder);
          assertEquals(least, Movement.between(earlier, split, trip).units(), where);
        }
      }
      compared++;
      forced += least > 0 ? 1 : 0;
    }
    assertTrue(compared > 70 && forced > 20, compared + " trips, " + forced + " with handovers");
  }

  /**
   * By hand: four equal units, one with a and three with b, who may now carry one thing only. Three
   * go to a, who has two more than before: two handovers, and within one there is none.
   */
  @Test
  void unitsThatGoToWhoHasSomeAlreadyAreAllCounted() {
    Trip trip =
        Trips.days(1)
            .hiker("a", h -> h.target(5000))
            .hiker("b", h -> h.target(5000).maxPieces(1))
            .item("u", s -> s.count(4).mass(10))
            .trip();
    Split earlier = Splits.of("a", "u").and("b", "u*3").split();
    Model model = ModelBuilder.of(trip, demand -> true, earlier, Set.of());
    Moves moves = new Moves(model, earlier);
    State state = new State(model);
    assertEquals(
        RuleModel.Verdict.NONE,
        RuleModel.find(state, Optional.of(Budget.of(moves, 1)), NODES, effort()));
    assertEquals(
        RuleModel.Verdict.FOUND,
        RuleModel.find(state, Optional.of(Budget.of(moves, 2)), NODES, effort()));
    assertEquals(2, moves.count(state));
    keepsRules("two handovers", trip, state);
  }

  /** How many ways of giving out whole things and parts the model holds possible. */
  private static int ways(Trips trips) {
    Trip trip = trips.trip();
    List<PieceRef> pieces = new ArrayList<>();
    for (Block block : ModelBuilder.of(trip).blocks) {
      block.contents().forEach(content -> pieces.add(content.ref()));
    }
    List<Hiker> hikers = trip.hikers();
    int found = 0;
    int all = (int) Math.round(Math.pow(hikers.size(), pieces.size()));
    for (int way = 0; way < all; way++) {
      List<Rule> rules = new ArrayList<>(trip.rules());
      for (int k = 0, rest = way; k < pieces.size(); k++, rest /= hikers.size()) {
        String hiker = hikers.get(rest % hikers.size()).id();
        rules.add(new Rule.Pinned("way" + k, List.of(pieces.get(k)), hiker));
      }
      Trip pinned = new Trip(trip.name(), trip.days(), trip.policy(), hikers, trip.shared(), rules);
      State state = new State(ModelBuilder.of(pinned));
      RuleModel.Verdict verdict = RuleModel.find(state, NODES, effort());
      assertNotEquals(RuleModel.Verdict.UNKNOWN, verdict);
      if (verdict == RuleModel.Verdict.FOUND) {
        keepsRules("way " + way, pinned, state);
        found++;
      }
    }
    return found;
  }

  private static Trips frontAndBack() {
    return Trips.days(1)
        .hiker("a", h -> h.target(1000).party("front"))
        .hiker("b", h -> h.target(1000).party("front"))
        .hiker("c", h -> h.target(1000).party("back"));
  }

  /** Both parts in front: 2 x 2 of 3 x 3; with c: 1. A second shelter: one in each party. */
  @Test
  void itemsInPartsCoverWhereAllPartsAre() {
    UnaryOperator<ItemOf> shelter = s -> s.part("fly", 2).part("pegs", 1).covers("shelter");
    assertEquals(4, ways(frontAndBack().item("s", shelter).partyHas("shelter", 1, "front")));
    assertEquals(1, ways(frontAndBack().item("s", shelter).partyHas("shelter", 1, "back")));
    assertEquals(0, ways(frontAndBack().item("s", shelter).partyHas("shelter", 1)));
    assertEquals(0, ways(frontAndBack().item("s", shelter).partyHas("shelter", 2, "front")));
    assertEquals(
        2 * 4, ways(frontAndBack().item("s", shelter).item("t", shelter).partyHas("shelter", 1)));
  }

  /** Whole, or in parts that are together: 2 ways in front for the tarp, 4 for the shelter. */
  @Test
  void wholeAndPartsCoverTogether() {
    Trips both =
        frontAndBack()
            .item("s", s -> s.part("fly", 2).part("pegs", 1).covers("shelter"))
            .item("tarp", s -> s.mass(3).covers("shelter"));
    // Not: tarp with c and the shelter not whole in front (1 x 5 of 27).
    assertEquals(22, ways(both.partyHas("shelter", 1, "front")));
  }

  /** The parts of two like shelters, one of which has to be shared by a and c. */
  @Test
  void partsOfLikeItemsAreNotExchanged() {
    UnaryOperator<ItemOf> shelter = s -> s.part("fly", 1).part("pegs", 1).covers("shelter");
    Trip trip =
        Trips.days(1)
            .hiker("a", h -> h.target(1000).party("front").maxPieces(1))
            .hiker("b", h -> h.target(1000).party("back").maxPieces(2))
            .hiker("c", h -> h.target(1000).party("front").maxPieces(1))
            .item("s", shelter)
            .item("t", shelter)
            .partyHas("shelter", 1)
            .trip();
    State state = new State(ModelBuilder.of(trip));
    assertEquals(RuleModel.Verdict.FOUND, RuleModel.find(state, NODES, effort()));
    keepsRules("a and c share one", trip, state);
  }

  /** Two people are there on day 2, so there are two units; c left before. */
  @Test
  void unitsOfADayFollowThosePresent() {
    Model model =
        ModelBuilder.of(
            Trips.days(2)
                .hiker("a", h -> h.target(1000))
                .hiker("b", h -> h.target(1000))
                .hiker("c", h -> h.target(1000).leavesAfter(1))
                .item("water", s -> s.perPerson(1).mass(1).onDays(2))
                .trip());
    assertEquals(2, model.blocks.size());
  }

  @Test
  void aPieceLeftAtHome() {
    Trip trip = Trips.targets(1000, 1000).pieces(7, 8, 9).trip();
    Model model = ModelBuilder.without(trip, PieceRef.of("p2"));
    assertEquals(
        List.of("p1", "p3"),
        model.blocks.stream().map(b -> b.contents().get(0).ref().text()).toList());
  }

  /** What is used up on day 1 leaves its packaging with who held it, but not with who goes home. */
  @Test
  void packagingStaysWithItsHolder() {
    Trips trips =
        Trips.days(2)
            .hiker("a", h -> h.target(1000).leavesAfter(1))
            .hiker("b", h -> h.target(1000))
            .item("meal", s -> s.count(1).mass(100).perDay(List.of(1, 0), 20));
    assertPackaging(20_000, trips.trip(), "b");
    assertPackaging(0, trips.trip(), "a");
  }

  private static void assertPackaging(long milligrams, Trip trip, String holder) {
    List<Rule> rules = List.of(new Rule.Pinned("r", List.of(PieceRef.of("meal")), holder));
    State state =
        new State(
            ModelBuilder.of(
                new Trip(
                    trip.name(), trip.days(), trip.policy(), trip.hikers(), trip.shared(), rules)));
    assertEquals(RuleModel.Verdict.FOUND, RuleModel.find(state, NODES, effort()));
    assertEquals(milligrams, state.shared[1 * 2 + 1]);
    assertEquals(holder.equals("b") ? 1 : State.NOBODY, state.holder[0][1]);
  }

  /** A state that is full already is emptied first. */
  @Test
  void whatWasHeldBeforeIsTaken() {
    State state =
        new State(ModelBuilder.of(Trips.targets(1000, 1000).pieces(70).pinned("b", "p1").trip()));
    state.put(0, 0);
    assertEquals(RuleModel.Verdict.FOUND, RuleModel.find(state, NODES, effort()));
    assertEquals(0, state.shared[0]);
    assertEquals(70_000, state.shared[1]);
  }

  /** Each pack takes one of the cans, and there is one can more than packs. */
  private static State cansAndPacks(int packs, UnaryOperator<Trips> cans) {
    Trips trips = Trips.days(1);
    for (int i = 0; i < packs; i++) {
      trips.hiker("h" + i, h -> h.target(1000).pack(0, 10));
    }
    return new State(ModelBuilder.of(cans.apply(trips).trip()));
  }

  private static UnaryOperator<Trips> unlike(int cans) {
    return trips -> {
      for (int k = 0; k < cans; k++) {
        long grams = 1L + k;
        trips.item("can" + k, s -> s.mass(grams).volume(6));
      }
      return trips;
    };
  }

  /** A no takes more than one node here, and each of them is paid for. */
  @Test
  void nodesArePaidFor() {
    Effort effort = effort();
    assertEquals(RuleModel.Verdict.NONE, RuleModel.find(cansAndPacks(4, unlike(5)), NODES, effort));
    assertTrue(effort.spent() >= 4 * 64, () -> "only " + effort.spent());
    assertEquals(0, effort.spent() % 64);
  }

  @Test
  void endsWhenItHasToEnd() {
    assertEquals(
        RuleModel.Verdict.UNKNOWN, RuleModel.find(cansAndPacks(6, unlike(7)), 3, effort()));
    Effort stopped =
        new Effort(
            Long.MAX_VALUE / 4,
            new Watch() {
              @Override
              public Signal signal() {
                return Signal.STOP_BY_CALLER;
              }

              @Override
              public void progress(Progress progress) {}
            });
    stopped.spend(1);
    assertEquals(
        RuleModel.Verdict.UNKNOWN, RuleModel.find(cansAndPacks(4, unlike(5)), NODES, stopped));
  }

  /**
   * Ten like cans for nine packs of one each: in every order there would be 9! ways to fail, in one
   * order the first can that is too many is the end.
   */
  @Test
  void alikeUnitsAreTriedInOneOrder() {
    State state = cansAndPacks(9, trips -> trips.item("can", s -> s.count(10).mass(1).volume(6)));
    assertEquals(RuleModel.Verdict.NONE, RuleModel.find(state, 3_000, effort()));
  }

  /**
   * Twenty things with d, who may keep 19 of them; 80 cells are 64 + 80 x 80 / 200 steps a node.
   */
  @Test
  void nodesWithinABudgetArePaidFor() {
    Trips trips = Trips.days(1);
    for (String id : List.of("a", "b", "c")) {
      trips.hiker(id, h -> h.target(1000));
    }
    trips.hiker("d", h -> h.target(1000).maxPieces(19));
    String[] all = new String[20];
    for (int k = 0; k < 20; k++) {
      all[k] = "p" + (k + 1);
      trips.pieces(10L + k);
    }
    Split earlier = Splits.of("d", all).split();
    Model model = ModelBuilder.of(trips.trip(), demand -> true, earlier, Set.of());
    Budget one = Budget.of(new Moves(model, earlier), 1);
    State state = new State(model);
    Effort effort = effort();
    assertEquals(RuleModel.Verdict.FOUND, RuleModel.find(state, Optional.of(one), NODES, effort));
    assertEquals(19, Arrays.stream(state.holder).filter(route -> route[0] == 3).count());
    assertEquals(96, RuleModel.stepsWithinBudget(model));
    assertTrue(effort.spent() >= 2 * 96 && effort.spent() % 96 == 0, () -> "" + effort.spent());
  }
}
