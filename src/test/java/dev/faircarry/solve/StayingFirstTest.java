package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.faircarry.fixture.Splits;
import dev.faircarry.fixture.Trips;
import dev.faircarry.split.Split;
import java.util.Set;
import org.chocosolver.solver.variables.IntVar;
import org.junit.jupiter.api.Test;

/** Who is tried first where a number of handovers must do. */
class StayingFirstTest {
  private final Split earlier = Splits.of("c", "p1").and("b", "can").and("d", "can").split();
  private final Model model =
      ModelBuilder.of(
          Trips.targets(1000, 1000, 1000, 1000)
              .pieces(5)
              .item("can", s -> s.count(2).mass(3))
              .trip(),
          demand -> true,
          earlier,
          Set.of());
  private final Budget budget = Budget.of(new Moves(model, earlier), 1);
  private final org.chocosolver.solver.Model cp = new org.chocosolver.solver.Model();
  private final StayingFirst stays = new StayingFirst(model, cp);

  @Test
  void whoHadItBefore() {
    IntVar holder = cp.intVar("p1", new int[] {0, 1, 2, 3});
    stays.tell(holder, model.blocks.get(0), budget);
    assertEquals(2, stays.selectValue(holder));
  }

  @Test
  void theFirstOfThoseWhoHadSome() {
    IntVar holder = cp.intVar("can", new int[] {0, 1, 2, 3});
    stays.tell(holder, model.blocks.get(1), budget);
    assertEquals(1, stays.selectValue(holder));
    IntVar withoutTheFirst = cp.intVar("other can", new int[] {0, 2, 3});
    stays.tell(withoutTheFirst, model.blocks.get(2), budget);
    assertEquals(3, stays.selectValue(withoutTheFirst));
  }

  @Test
  void elseTheFirstWhoMay() {
    IntVar holder = cp.intVar("p1", new int[] {1, 3});
    assertEquals(1, stays.selectValue(holder));
    stays.tell(holder, model.blocks.get(0), budget);
    assertEquals(1, stays.selectValue(holder));
  }
}
