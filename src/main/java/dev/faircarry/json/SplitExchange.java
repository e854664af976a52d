package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.app.ExplainTrip;
import dev.faircarry.app.JudgeSplit;
import dev.faircarry.app.JudgedSplit;
import dev.faircarry.app.SplitResult;
import dev.faircarry.app.SplitTrip;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Documents in, what the use cases make of them out. */
public final class SplitExchange {
  private SplitExchange() {}

  /** Reads a trip document and has it split. */
  public static Reading<SplitResult> split(byte[] trip, SplitTrip useCase, long effortSteps) {
    return TripReader.read(trip).map(read -> useCase.split(read, effortSteps));
  }

  /** Reads a trip document, has it split and the split explained. */
  public static Reading<ExplainTrip.Explained> explain(
      byte[] trip, ExplainTrip useCase, long effortSteps) {
    return TripReader.read(trip).map(read -> useCase.explain(read, effortSteps));
  }

  /** Reads {@code {"trip": ..., "split": ...}} and has the split judged. */
  public static Reading<JudgedSplit> check(byte[] document, JudgeSplit useCase) {
    Issues issues = new Issues();
    Optional<Entry> entry =
        JsonText.read(document, issues).flatMap(root -> Entry.of(root, Pointer.ROOT, issues));
    if (entry.isEmpty()) {
      return Report.bad(issues);
    }
    Optional<JsonNode> trip = entry.get().find("trip");
    Optional<JsonNode> split = entry.get().find("split");
    if (trip.isEmpty()) {
      entry.get().missing("trip", "");
    }
    if (split.isEmpty()) {
      entry.get().missing("split", "");
    }
    entry.get().done();
    Reading<Trip> readTrip =
        trip.map(t -> TripReader.read(t, Pointer.ROOT.at("trip"), new Issues()))
            .orElseGet(() -> new Reading.Bad<>(List.of(), false));
    Reading<Split> readSplit =
        split
            .map(s -> SplitReader.read(s, Pointer.ROOT.at("split"), new Issues()))
            .orElseGet(() -> new Reading.Bad<>(List.of(), false));
    return judged(readTrip, readSplit, issues, useCase);
  }

  /** Reads a trip and a split from documents of their own and has the split judged. */
  public static Reading<JudgedSplit> check(byte[] trip, byte[] split, JudgeSplit useCase) {
    Reading<Trip> readTrip = TripReader.read(trip);
    if (readTrip instanceof Reading.Bad<Trip> bad) {
      return new Reading.Bad<>(bad.issues(), bad.more());
    }
    return judged(readTrip, SplitReader.read(split), new Issues(), useCase);
  }

  private static Reading<JudgedSplit> judged(
      Reading<Trip> trip, Reading<Split> split, Issues around, JudgeSplit useCase) {
    if (trip instanceof Reading.Read<Trip> t
        && split instanceof Reading.Read<Split> s
        && around.list().isEmpty()) {
      return new Reading.Read<>(useCase.judge(t.value(), s.value()));
    }
    List<Reading.Bad<?>> bad = new ArrayList<>();
    if (trip instanceof Reading.Bad<Trip> t) {
      bad.add(t);
    }
    if (split instanceof Reading.Bad<Split> s) {
      bad.add(s);
    }
    return Report.joined(around, bad);
  }
}
