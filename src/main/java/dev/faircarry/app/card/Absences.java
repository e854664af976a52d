package dev.faircarry.app.card;

import dev.faircarry.app.Rebalance;
import dev.faircarry.app.StoreLimits;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Remembers what was worked out for the splits last asked about: every hiker of a group asks the
 * same within minutes, and the answer to one split never changes.
 */
public final class Absences {
  private final Rebalance rebalance;

  private final Map<String, List<Absence>> known =
      new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, List<Absence>> eldest) {
          return size() > StoreLimits.ABSENCES_KNOWN;
        }
      };

  public Absences(Rebalance rebalance) {
    this.rebalance = rebalance;
  }

  /** Runs a search where searches are run. */
  @FunctionalInterface
  public interface Running {
    List<Absence> run(Supplier<List<Absence>> search);
  }

  /**
   * A case for every hiker of the trip.
   *
   * @param id names the split; the same id always means the same trip and split
   * @param effortSteps search steps for all cases together
   */
  public List<Absence> of(String id, Running running, Trip trip, Split split, long effortSteps) {
    synchronized (known) {
      List<Absence> found = known.get(id);
      if (found != null) {
        return found;
      }
    }
    List<Absence> made = running.run(() -> Absence.of(rebalance, trip, split, effortSteps));
    synchronized (known) {
      known.put(id, made);
    }
    return made;
  }
}
