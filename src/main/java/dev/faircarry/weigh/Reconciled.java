package dev.faircarry.weigh;

import dev.faircarry.trip.change.Change;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One subject: what was expected, what was read, and what explains the difference.
 *
 * @param readings all of its readings, raw
 * @param readMilligrams the middle of the readings
 * @param differenceMilligrams read less expected
 * @param suspects masses that nobody weighed and that could explain the difference, largest first
 * @param question what to look at again; only for {@code QUESTIONED}
 * @param changes what accepting it does to the trip; none for what is questioned
 */
public record Reconciled(
    Weighed weighed,
    List<ScaleReading> readings,
    long expectedMilligrams,
    long readMilligrams,
    long differenceMilligrams,
    long toleranceMilligrams,
    Result result,
    List<Suspect> suspects,
    Optional<String> question,
    List<Change> changes) {
  public Reconciled {
    readings = List.copyOf(readings);
    suspects = List.copyOf(suspects);
    changes = List.copyOf(changes);
  }

  /** What came of it. */
  public enum Result {
    /** Within the tolerance. */
    AGREES,
    /** A single thing: the scale's mass takes the place of the stated one. */
    REPLACES,
    /** Labels of the pack could explain it. */
    LABELS_COULD_EXPLAIN,
    UNEXPLAINED,
    QUESTIONED;

    /** The result as it stands in documents. */
    public String text() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /**
   * A mass that nobody weighed.
   *
   * @param thing its name
   * @param offThousandths by how much it would be off, were it alone to explain the difference
   */
  public record Suspect(String thing, long statedMilligrams, long offThousandths) {}
}
