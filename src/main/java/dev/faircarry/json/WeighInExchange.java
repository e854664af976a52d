package dev.faircarry.json;

import dev.faircarry.app.WeighIn;
import dev.faircarry.app.WeighedIn;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.Trip;
import dev.faircarry.weigh.ScaleReading;
import dev.faircarry.weigh.Tolerance;
import java.util.List;

/** Documents about weigh-ins in, what the use case makes of them out. */
public final class WeighInExchange {
  private WeighInExchange() {}

  /** Reads {@code {"trip", "split", "readings", "tolerance", "accept"}} and answers. */
  public static Reading<WeighedIn.Told> weighIn(byte[] document) {
    Issues issues = new Issues();
    return JsonText.read(document, issues)
        .flatMap(root -> Entry.of(root, Pointer.ROOT, issues))
        .map(
            entry ->
                answer(entry, RebalanceExchange.tripIn(entry), RebalanceExchange.splitIn(entry)))
        .orElseGet(() -> Report.bad(issues));
  }

  /**
   * The same from documents of their own.
   *
   * @param readings {@code {"readings", "tolerance", "accept"}}
   */
  public static Reading<WeighedIn.Told> weighIn(byte[] trip, byte[] split, byte[] readings) {
    Reading<Trip> readTrip = TripReader.read(trip);
    if (readTrip instanceof Reading.Bad<Trip> bad) {
      return new Reading.Bad<>(bad.issues(), bad.more());
    }
    Reading<Split> readSplit = SplitReader.read(split);
    if (readSplit instanceof Reading.Bad<Split> bad) {
      return new Reading.Bad<>(bad.issues(), bad.more());
    }
    Issues issues = new Issues();
    return JsonText.read(readings, issues)
        .flatMap(root -> Entry.of(root, Pointer.ROOT, issues))
        .map(entry -> answer(entry, readTrip, readSplit))
        .orElseGet(() -> Report.bad(issues));
  }

  private static Reading<WeighedIn.Told> answer(
      Entry entry, Reading<Trip> trip, Reading<Split> split) {
    List<ScaleReading> readings = ScaleReader.readings(entry);
    Tolerance tolerance = ScaleReader.tolerance(entry);
    WeighIn.Accept accept = ScaleReader.accept(entry);
    entry.done();
    Reading<WeighIn.Asked> asked =
        Report.together(
            entry.issues(),
            List.of(trip, split),
            () ->
                new WeighIn.Asked(
                    RebalanceExchange.value(trip),
                    RebalanceExchange.value(split),
                    readings,
                    tolerance,
                    accept));
    if (asked instanceof Reading.Bad<WeighIn.Asked> bad) {
      return new Reading.Bad<>(bad.issues(), bad.more());
    }
    return told(WeighIn.answer(RebalanceExchange.value(asked)));
  }

  static Reading<WeighedIn.Told> told(WeighedIn answer) {
    if (answer instanceof WeighedIn.Unfit unfit) {
      int most = Math.min(unfit.issues().size(), Limits.ISSUES);
      return new Reading.Bad<>(unfit.issues().subList(0, most), unfit.issues().size() > most);
    }
    return new Reading.Read<>((WeighedIn.Told) answer);
  }
}
