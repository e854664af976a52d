package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.access.Sight;
import dev.faircarry.app.Rebalance;
import dev.faircarry.app.Rebalanced;
import dev.faircarry.check.Essentials;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import java.util.Optional;
import java.util.function.Function;

/** Requests about changes of plans of a stored trip: trip and split are those that are kept. */
public final class StoredChangeExchange {
  private StoredChangeExchange() {}

  /**
   * A change of plans that is asked about.
   *
   * @param accept whether what comes of it is to be kept
   */
  public record Wanted(Rebalance.Asked asked, boolean accept) {

    /** Whether it states a body mass that the asker does not see. */
    public boolean statesHidden(Sight sight) {
      return asked.changes().stream()
          .anyMatch(
              change ->
                  change instanceof Change.CanCarry can
                      && can.bodyMass().isPresent()
                      && sight.hides(can.hiker()));
    }
  }

  /** Reads {@code {"changes", "frozen", "maxHandovers", "accept"}}, all optional. */
  public static Reading<Wanted> wanted(byte[] document, Trip trip, Split agreed) {
    return read(
        document,
        entry -> {
          boolean accept = entry.flag("accept");
          return RebalanceExchange.asked(
                  entry, new Reading.Read<>(trip), new Reading.Read<>(agreed))
              .map(asked -> new Wanted(asked, accept));
        });
  }

  /** Works it out. */
  public static Reading<Rebalanced> rebalance(Wanted wanted, Rebalance useCase, long effortSteps) {
    return RebalanceExchange.answer(new Reading.Read<>(wanted.asked()), useCase, effortSteps);
  }

  /** Reads {@code {"piece" or "item", "units"}} and answers as {@code sight} allows. */
  public static Reading<byte[]> takers(byte[] document, Trip trip, Split agreed, Sight sight) {
    return read(
        document,
        entry ->
            DepartureExchange.takers(
                entry, new Reading.Read<>(trip), new Reading.Read<>(agreed), sight));
  }

  /** Reads {@code {"personalEssentials"}}; an empty document is one without. */
  public static Reading<Essentials> essentials(byte[] document) {
    if (document.length == 0) {
      return new Reading.Read<>(Essentials.DEFAULT);
    }
    return read(
        document,
        entry -> {
          Essentials essentials = DepartureExchange.essentials(entry);
          entry.done();
          return entry.issues().list().isEmpty()
              ? new Reading.Read<>(essentials)
              : Report.bad(entry.issues());
        });
  }

  private static <T> Reading<T> read(byte[] document, Function<Entry, Reading<T>> fields) {
    Issues issues = new Issues();
    Optional<JsonNode> root = JsonText.read(document, issues);
    return root.flatMap(node -> Entry.of(node, Pointer.ROOT, issues))
        .map(fields)
        .orElseGet(() -> Report.bad(issues));
  }
}
