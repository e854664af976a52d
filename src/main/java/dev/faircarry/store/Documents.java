package dev.faircarry.store;

import dev.faircarry.app.TripState;
import dev.faircarry.json.OutcomeText;
import dev.faircarry.json.Reading;
import dev.faircarry.json.ScaleText;
import dev.faircarry.json.TripReader;
import dev.faircarry.json.TripWriter;
import dev.faircarry.split.Outcome;
import dev.faircarry.split.Progress;
import dev.faircarry.split.Proof;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import dev.faircarry.weigh.ScaleReading;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Between the records of the house and the sealed texts in the tables. */
final class Documents {
  private final Seal seal;
  private final OpenedTrips opened = new OpenedTrips();

  Documents(Seal seal) {
    this.seal = seal;
  }

  byte[] trip(String id, int revision, Trip trip) {
    return seal.close(TripWriter.write(trip), placeOfTrip(id, revision));
  }

  Trip trip(String id, int revision, byte[] sealed) {
    String place = placeOfTrip(id, revision);
    Optional<Trip> before = opened.find(place, sealed);
    if (before.isPresent()) {
      return before.get();
    }
    if (TripReader.read(seal.open(sealed, place)) instanceof Reading.Read<Trip> read) {
      opened.keep(place, sealed, read.value());
      return read.value();
    }
    throw new IllegalStateException("a stored document cannot be read");
  }

  /** A split; without a proof for one made by hand. */
  byte[] split(String trip, String id, Split split, Optional<Proof> proof) {
    Outcome outcome = new Outcome.Solved(split, proof.orElse(NO_PROOF));
    return seal.close(OutcomeText.write(outcome), placeOfSplit(trip, id));
  }

  /** Nothing is proved of nothing: no search gives this one. */
  private static final Proof NO_PROOF = new Proof(1, 0, 0, OptionalLong.of(-1), false, 0, false);

  Outcome.Solved split(String trip, String id, byte[] sealed) {
    return (Outcome.Solved) OutcomeText.read(seal.open(sealed, placeOfSplit(trip, id)));
  }

  static Optional<Proof> stated(Proof proof) {
    return proof.equals(NO_PROOF) ? Optional.empty() : Optional.of(proof);
  }

  byte[] reading(String trip, String id, ScaleReading reading) {
    return seal.close(ScaleText.write(reading), placeOfReading(trip, id));
  }

  ScaleReading reading(String trip, String id, byte[] sealed) {
    return ScaleText.read(seal.open(sealed, placeOfReading(trip, id)));
  }

  byte[] outcome(String job, Outcome outcome) {
    return seal.close(OutcomeText.write(outcome), placeOfJob(job));
  }

  Outcome outcome(String job, byte[] sealed) {
    return OutcomeText.read(seal.open(sealed, placeOfJob(job)));
  }

  byte[] progress(String job, Progress progress) {
    return seal.close(OutcomeText.writeProgress(progress), placeOfJob(job));
  }

  Progress progress(String job, byte[] sealed) {
    return OutcomeText.readProgress(seal.open(sealed, placeOfJob(job)));
  }

  byte[] reply(String scope, String key, byte[] body) {
    return seal.close(body, placeOfReply(scope, key));
  }

  byte[] openedReply(String scope, String key, byte[] sealed) {
    return seal.open(sealed, placeOfReply(scope, key));
  }

  /** Ids hold no spaces. */
  static String ids(TripState state) {
    return String.join(" ", new TreeSet<>(state.keptPrivate()));
  }

  static Set<String> ids(String text) {
    return Arrays.stream(text.split(" ", -1))
        .filter(id -> !id.isEmpty())
        .collect(Collectors.toUnmodifiableSet());
  }

  private static String placeOfTrip(String id, int revision) {
    return "trip/" + id + "/" + revision;
  }

  private static String placeOfSplit(String trip, String id) {
    return "split/" + trip + "/" + id;
  }

  private static String placeOfReading(String trip, String id) {
    return "reading/" + trip + "/" + id;
  }

  private static String placeOfJob(String id) {
    return "job/" + id;
  }

  private static String placeOfReply(String scope, String key) {
    return "reply/" + scope + "/" + key;
  }
}
