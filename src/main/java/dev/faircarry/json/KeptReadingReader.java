package dev.faircarry.json;

import dev.faircarry.app.WeighIn;
import dev.faircarry.app.WeighedIn;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.trip.Trip;
import dev.faircarry.weigh.ReadingIssues;
import dev.faircarry.weigh.ScaleReading;
import dev.faircarry.weigh.Tolerance;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reads requests about readings that are kept with a trip. */
public final class KeptReadingReader {
  /** Nothing but a look, with the default tolerance. */
  public static final Wanted LOOK = new Wanted(Tolerance.DEFAULT, new WeighIn.Accept.Nothing());

  private KeptReadingReader() {}

  /** What is asked of the readings that are kept. */
  public record Wanted(Tolerance tolerance, WeighIn.Accept accept) {
    /** Whether the trip is to be changed. */
    public boolean accepts() {
      return !(accept instanceof WeighIn.Accept.Nothing);
    }
  }

  /** Reads {@code {"readings": [...]}}, each of something the trip has. */
  public static Reading<List<ScaleReading>> readings(byte[] document, Trip trip) {
    return read(
        document,
        entry -> {
          List<ScaleReading> readings = ScaleReader.readings(entry);
          if (entry.issues().list().isEmpty()) {
            ReadingIssues.find(trip, readings, entry.at().at("readings"), entry.issues());
          }
          return readings;
        });
  }

  /** Reads {@code {"tolerance", "accept"}}, both optional. */
  public static Reading<Wanted> wanted(byte[] document) {
    return read(
        document, entry -> new Wanted(ScaleReader.tolerance(entry), ScaleReader.accept(entry)));
  }

  /** The answer of a weigh-in, or its issues. */
  public static Reading<WeighedIn.Told> told(WeighedIn answer) {
    return WeighInExchange.told(answer);
  }

  private static <T> Reading<T> read(byte[] document, Function<Entry, T> fields) {
    Issues issues = new Issues();
    Optional<T> value =
        JsonText.read(document, issues)
            .flatMap(node -> Entry.of(node, Pointer.ROOT, issues))
            .map(
                entry -> {
                  T found = fields.apply(entry);
                  entry.done();
                  return found;
                });
    return value.isPresent() && issues.list().isEmpty()
        ? new Reading.Read<>(value.get())
        : Report.bad(issues);
  }
}
