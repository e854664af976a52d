package dev.faircarry.solve.take;

import dev.faircarry.choose.Candidate;
import dev.faircarry.choose.Required;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.chocosolver.solver.constraints.Propagator;
import org.chocosolver.solver.constraints.PropagatorPriority;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.util.ESat;

/**
 * A lower bound on a sum (of mass, or of money) from what the needs still ask for.
 *
 * <p>What is taken already counts in full. Each thing still open shares its weight evenly among the
 * needs it could still serve; each need is then met as cheaply as fractions allow. The shares of a
 * thing never exceed its weight, so the sum is never above what any choice from here on costs.
 */
final class CoverBound extends Propagator<IntVar> {
  private final int[] weights;
  private final long[] asked;
  private final long[][] covers;
  private final long[][] requires;
  private final IntVar total;

  CoverBound(
      IntVar[] counts,
      IntVar total,
      int[] weights,
      List<Candidate> candidates,
      List<Required> needs) {
    super(with(counts, total), PropagatorPriority.LINEAR, false);
    this.weights = weights.clone();
    this.asked = needs.stream().mapToLong(Required::atLeast).toArray();
    this.covers = new long[needs.size()][];
    this.requires = new long[needs.size()][];
    for (int n = 0; n < asked.length; n++) {
      String need = needs.get(n).need();
      covers[n] = candidates.stream().mapToLong(c -> c.covers(need)).toArray();
      requires[n] = candidates.stream().mapToLong(c -> c.requires(need)).toArray();
    }
    this.total = total;
  }

  private static IntVar[] with(IntVar[] counts, IntVar total) {
    IntVar[] all = Arrays.copyOf(counts, counts.length + 1);
    all[counts.length] = total;
    return all;
  }

  @Override
  public void propagate(int eventMask) throws ContradictionException {
    total.updateLowerBound(Math.toIntExact(Math.min(Integer.MAX_VALUE, bound())), this);
  }

  /** What one more of a thing would meet of a need, and what that would cost. */
  private record Part(long meets, long costs, int most) {}

  private long bound() {
    long sum = 0;
    long[] open = asked.clone();
    for (int i = 0; i < weights.length; i++) {
      int taken = vars[i].getLB();
      if (taken > 0) {
        sum += (long) taken * weights[i];
        for (int n = 0; n < open.length; n++) {
          open[n] += taken * (requires[n][i] - covers[n][i]);
        }
      }
    }
    int[] shares = new int[weights.length];
    for (int n = 0; n < open.length; n++) {
      for (int i = 0; open[n] > 0 && i < shares.length; i++) {
        shares[i] += covers[n][i] > 0 ? 1 : 0;
      }
    }
    for (int n = 0; n < open.length; n++) {
      if (open[n] > 0) {
        sum += cheapest(open[n], parts(n, open[n], shares));
      }
    }
    return sum;
  }

  private List<Part> parts(int need, long open, int[] shares) {
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < weights.length; i++) {
      // Beyond what is open a thing meets nothing; so cut, a thing that meets all of it costs its
      // whole share.
      long meets = Math.min(open, covers[need][i]);
      int most = meets > 0 ? vars[i].getUB() - vars[i].getLB() : 0;
      if (most > 0) {
        parts.add(new Part(meets, weights[i] / shares[i], most));
      }
    }
    parts.sort((a, b) -> Long.compare(a.costs() * b.meets(), b.costs() * a.meets()));
    return parts;
  }

  private static long cheapest(long open, List<Part> parts) {
    long sum = 0;
    long rest = open;
    for (Part part : parts) {
      if (rest <= 0) {
        break;
      }
      long meets = part.meets() * part.most();
      sum += meets <= rest ? part.costs() * part.most() : part.costs() * rest / part.meets();
      rest -= meets;
    }
    return sum;
  }

  @Override
  public ESat isEntailed() {
    return isCompletelyInstantiated() ? ESat.eval(total.getValue() >= bound()) : ESat.UNDEFINED;
  }
}
