package dev.faircarry.solve;

import dev.faircarry.split.Advice;
import dev.faircarry.split.Binding;
import dev.faircarry.split.Demand;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Works out what binds the worst-off morning and what leaving one thing out would gain. */
public final class AdviceSearch {
  private static final int MOST = 5;
  private static final int QUESTIONS = 60;

  private final Trip trip;
  private final Effort effort;

  private AdviceSearch(Trip trip, Effort effort) {
    this.trip = trip;
    this.effort = effort;
  }

  /**
   * Asks, for each rule, limit and shared piece in turn, what the worst-off morning would be
   * without it.
   *
   * @param trip a trip without issues that has a split
   * @param worstSteps highest step of the split to be explained
   * @param effortSteps search steps for all questions together
   */
  public static Advice of(Trip trip, long worstSteps, long effortSteps, Watch watch) {
    return new AdviceSearch(trip, new Effort(effortSteps, watch)).advice((int) worstSteps);
  }

  private Advice advice(int worst) {
    Model m = ModelBuilder.of(trip);
    Optional<Binding> plain = fromMasses(m, worst);
    List<Advice.Lifted> lifted = new ArrayList<>();
    if (plain.isEmpty() || !(plain.get() instanceof Binding.OwnKit)) {
      ask(worst, lifted);
    }
    lifted.sort((x, y) -> Long.compare(x.worstSteps(), y.worstSteps()));
    Optional<Binding> demand =
        lifted.stream()
            .filter(l -> l.demand().isPresent())
            .findFirst()
            .map(l -> new Binding.OneDemand(l.demand().orElseThrow(), l.worstSteps()));
    Binding binding = plain.or(() -> demand).orElseGet(Binding.Grain::new);
    return new Advice(binding, lifted.stream().limit(MOST).toList(), effort.spent());
  }

  private Optional<Binding> fromMasses(Model m, int worst) {
    for (int i = 0; i < m.hikers; i++) {
      for (int d = 0; d <= m.lastDay[i]; d++) {
        if (m.step(i, d, 0) >= worst) {
          String id = trip.hikers().get(i).id();
          return Optional.of(new Binding.OwnKit(id, d + 1, m.step(i, d, 0)));
        }
      }
    }
    for (int d = 0; d < m.days; d++) {
      long room = 0;
      for (int i = 0; i < m.hikers; i++) {
        room += m.present(i, d) ? Math.max(0, m.capacity(i, d, worst - 1L)) : 0;
      }
      if (room < m.leastTotal[d]) {
        return Optional.of(new Binding.SheerTotal(d + 1, m.leastTotal[d], room));
      }
    }
    for (Block block : m.blocks) {
      for (int d = 0; d < m.days; d++) {
        int s = m.stageOfDay[d];
        int least = Integer.MAX_VALUE;
        for (int i : Routes.holders(m, block, s)) {
          least = Math.min(least, m.step(i, d, block.massSince()[s][d]));
        }
        if (least != Integer.MAX_VALUE && least >= worst) {
          return Optional.of(
              new Binding.LargePiece(
                  block.contents().stream().map(c -> c.ref()).distinct().toList(), d + 1, least));
        }
      }
    }
    return Optional.empty();
  }

  private void ask(int worst, List<Advice.Lifted> lifted) {
    List<Demand> demands = Conflict.demands(trip);
    List<PieceRef> pieces = pieces();
    int questions = Math.max(1, Math.min(QUESTIONS, demands.size() + pieces.size()));
    long each = effort.left() / questions;
    int asked = 0;
    for (Demand demand : demands) {
      if (asked++ < QUESTIONS / 2 && !effort.over()) {
        Predicate<Demand> rest = d -> !d.equals(demand);
        answer(
            ModelBuilder.of(trip, rest),
            each,
            worst,
            Optional.empty(),
            Optional.of(demand),
            lifted);
      }
    }
    for (PieceRef piece : pieces) {
      if (asked++ < QUESTIONS && !effort.over()) {
        Model without = ModelBuilder.without(trip, piece);
        answer(without, each, worst, Optional.of(piece), Optional.empty(), lifted);
      }
    }
  }

  /** Whole items, parts and counted items, the heaviest first. */
  private List<PieceRef> pieces() {
    record Weighed(PieceRef ref, long milligrams) {}
    List<Weighed> all = new ArrayList<>();
    for (SharedItem item : trip.shared()) {
      PieceRef ref = PieceRef.item(item.id());
      if (item.form() instanceof Form.Whole whole) {
        all.add(new Weighed(ref, whole.mass().milligrams()));
      } else if (item.form() instanceof Form.Counted counted) {
        all.add(new Weighed(ref, counted.unitMass().milligrams()));
      } else if (item.form() instanceof Form.Parts parts) {
        for (Form.Part part : parts.parts()) {
          all.add(new Weighed(PieceRef.part(item.id(), part.id()), part.mass().milligrams()));
        }
      }
    }
    all.sort((x, y) -> Long.compare(y.milligrams(), x.milligrams()));
    return all.stream().map(Weighed::ref).toList();
  }

  private void answer(
      Model m,
      long steps,
      int worst,
      Optional<PieceRef> piece,
      Optional<Demand> demand,
      List<Advice.Lifted> lifted) {
    Effort share = effort.ofSteps(steps);
    State state = new State(m);
    if (!m.contradictory && new Construction(state, share, new Dice(1)).build()) {
      Search search = new Search(state, share);
      search.run();
      int now = state.list().length == 0 ? 0 : state.list()[0];
      if (now < worst) {
        lifted.add(new Advice.Lifted(piece, demand, now, search.provedLevels() > 0));
      }
    }
    effort.spend(share.spent());
  }
}
