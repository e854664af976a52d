package dev.faircarry.app;

import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import dev.faircarry.weigh.ReadingIssues;
import dev.faircarry.weigh.ScaleReading;
import dev.faircarry.weigh.Tolerance;
import dev.faircarry.weigh.Weighed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What can be done with readings that are kept with a trip. */
public final class KeptReadings {
  private final KeptTrips trips;

  public KeptReadings(KeptTrips trips) {
    this.trips = trips;
  }

  /** Keeps readings; empty when the trip has as many as it may. */
  public Optional<List<StoredReading>> add(Visit visit, List<ScaleReading> readings) {
    StoredTrip trip = visit.stored();
    List<StoredReading> all = new ArrayList<>();
    for (ScaleReading reading : readings) {
      all.add(
          new StoredReading(
              trips.freshId(),
              trip.id(),
              trip.state().agreedSplit(),
              trips.now(),
              visit.author(),
              reading));
    }
    return trips.store().readings().add(trip.id(), all, StoreLimits.READINGS_PER_TRIP)
        ? Optional.of(all)
        : Optional.empty();
  }

  /**
   * A weigh-in of what is kept.
   *
   * @param notCounted ids of readings that say nothing now: of whole packs as another split had
   *     filled them, and of things the trip no longer has
   */
  public record Weighing(WeighedIn answer, List<String> notCounted) {
    public Weighing {
      notCounted = List.copyOf(notCounted);
    }
  }

  /** Sets all readings that count against the newest revision and the agreed split. */
  public Weighing weigh(Visit visit, Tolerance tolerance, WeighIn.Accept accept) {
    TripState state = visit.stored().state();
    List<ScaleReading> counted = new ArrayList<>();
    List<String> notCounted = new ArrayList<>();
    for (StoredReading each : trips.store().readings().of(visit.stored().id())) {
      if (counts(each, state.trip(), state.agreedSplit())) {
        counted.add(each.reading());
      } else {
        notCounted.add(each.id());
      }
    }
    return new Weighing(
        WeighIn.answer(new WeighIn.Asked(state.trip(), split(visit), counted, tolerance, accept)),
        notCounted);
  }

  private static boolean counts(StoredReading each, Trip trip, Optional<String> agreed) {
    boolean packedSo = agreed.isPresent() && each.split().equals(agreed);
    return ReadingIssues.has(trip, each.reading().weighed())
        && (packedSo || !(each.reading().weighed() instanceof Weighed.WholePack));
  }

  /** The agreed split, or an empty one: then no whole pack counts. */
  private Split split(Visit visit) {
    return visit
        .stored()
        .state()
        .agreedSplit()
        .flatMap(id -> trips.store().trips().split(visit.stored().id(), id))
        .map(StoredSplit::split)
        .orElseGet(() -> new Split(List.of(), List.of(), List.of()));
  }
}
