package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.app.IfOneStaysHome;
import dev.faircarry.app.Rebalance;
import dev.faircarry.app.Rebalanced;
import dev.faircarry.check.Issue;
import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Documents about changes of plans in, what the use cases make of them out. */
public final class RebalanceExchange {
  private RebalanceExchange() {}

  /** Reads {@code {"trip", "split", "changes", "frozen", "maxHandovers"}} and rebalances. */
  public static Reading<Rebalanced> rebalance(byte[] document, Rebalance useCase, long steps) {
    Issues issues = new Issues();
    return JsonText.read(document, issues)
        .flatMap(root -> Entry.of(root, Pointer.ROOT, issues))
        .map(entry -> answer(asked(entry, tripIn(entry), splitIn(entry)), useCase, steps))
        .orElseGet(() -> Report.bad(issues));
  }

  /**
   * The same from documents of their own.
   *
   * @param changes {@code {"changes", "frozen", "maxHandovers"}}
   */
  public static Reading<Rebalanced> rebalance(
      byte[] trip, byte[] split, byte[] changes, Rebalance useCase, long steps) {
    Reading<Trip> readTrip = TripReader.read(trip);
    if (readTrip instanceof Reading.Bad<Trip> bad) {
      return new Reading.Bad<>(bad.issues(), bad.more());
    }
    Reading<Split> readSplit = SplitReader.read(split);
    if (readSplit instanceof Reading.Bad<Split> bad) {
      return new Reading.Bad<>(bad.issues(), bad.more());
    }
    Issues issues = new Issues();
    return JsonText.read(changes, issues)
        .flatMap(root -> Entry.of(root, Pointer.ROOT, issues))
        .map(entry -> answer(asked(entry, readTrip, readSplit), useCase, steps))
        .orElseGet(() -> Report.bad(issues));
  }

  /** Reads {@code {"trip", "split"}} and works out what to do without each hiker in turn. */
  public static Reading<List<IfOneStaysHome.Case>> dropOuts(
      byte[] document, IfOneStaysHome useCase, long steps) {
    Issues issues = new Issues();
    return JsonText.read(document, issues)
        .flatMap(root -> Entry.of(root, Pointer.ROOT, issues))
        .map(
            entry -> {
              Reading<Trip> trip = tripIn(entry);
              Reading<Split> split = splitIn(entry);
              entry.done();
              return Report.together(
                  issues,
                  List.of(trip, split),
                  () -> useCase.cases(value(trip), value(split), steps));
            })
        .orElseGet(() -> Report.bad(issues));
  }

  /** The same from documents of their own. */
  public static Reading<List<IfOneStaysHome.Case>> dropOuts(
      byte[] trip, byte[] split, IfOneStaysHome useCase, long steps) {
    Reading<Trip> readTrip = TripReader.read(trip);
    if (readTrip instanceof Reading.Bad<Trip> bad) {
      return new Reading.Bad<>(bad.issues(), bad.more());
    }
    return SplitReader.read(split).map(made -> useCase.cases(value(readTrip), made, steps));
  }

  static Reading<Trip> tripIn(Entry entry) {
    Optional<JsonNode> node = needed(entry, "trip");
    return node.map(n -> TripReader.read(n, Pointer.ROOT.at("trip"), new Issues()))
        .orElseGet(() -> new Reading.Bad<>(List.of(), false));
  }

  static Reading<Split> splitIn(Entry entry) {
    Optional<JsonNode> node = needed(entry, "split");
    return node.map(n -> SplitReader.read(n, Pointer.ROOT.at("split"), new Issues()))
        .orElseGet(() -> new Reading.Bad<>(List.of(), false));
  }

  private static Optional<JsonNode> needed(Entry entry, String field) {
    Optional<JsonNode> node = entry.find(field);
    if (node.isEmpty()) {
      entry.missing(field, "");
    }
    return node;
  }

  static <T> T value(Reading<T> reading) {
    return ((Reading.Read<T>) reading).value();
  }

  static Reading<Rebalance.Asked> asked(Entry entry, Reading<Trip> trip, Reading<Split> split) {
    List<Change> changes = ChangeReader.read(entry, "changes");
    Set<PieceRef> frozen = frozen(entry, trip);
    OptionalInt most = entry.whole("maxHandovers", 0);
    if (most.isPresent() && most.getAsInt() < 0) {
      entry
          .issues()
          .add(
              IssueCode.OUT_OF_RANGE,
              entry.at().at("maxHandovers"),
              String.valueOf(most.getAsInt()),
              "There cannot be less than no handovers.",
              "Write 0 or more, or leave it out.");
    }
    entry.done();
    return Report.together(
        entry.issues(),
        List.of(trip, split),
        () -> new Rebalance.Asked(value(trip), value(split), changes, frozen, most));
  }

  /** Pieces of the trip before the changes; those added by them are with nobody yet. */
  private static Set<PieceRef> frozen(Entry entry, Reading<Trip> trip) {
    List<String> names = entry.texts("frozen", Limits.PIECES).orElse(List.of());
    Set<PieceRef> frozen = new LinkedHashSet<>();
    for (int i = 0; i < names.size(); i++) {
      PieceRef piece = PieceRef.of(names.get(i));
      Pointer place = entry.at().at("frozen").at(i);
      frozen.add(piece);
      if (trip instanceof Reading.Read<Trip> read
          && !known(read.value(), piece)
          && !entry.issues().has(place)) {
        entry
            .issues()
            .add(
                IssueCode.UNKNOWN_PIECE,
                place,
                names.get(i),
                "No shared item or part is called “" + Issues.shortened(names.get(i)) + "”.");
      }
    }
    return frozen;
  }

  private static boolean known(Trip trip, PieceRef piece) {
    return trip.shared().stream()
        .filter(item -> item.id().equals(piece.item()))
        .anyMatch(item -> piece.part().isEmpty() || isPiece(item, piece));
  }

  /** Whether an item of this id is handed out as this piece: whole, by the unit, or this part. */
  static boolean isPiece(SharedItem item, PieceRef piece) {
    return item.form() instanceof Form.Parts parts
        ? parts.parts().stream().anyMatch(p -> piece.part().equals(Optional.of(p.id())))
        : piece.part().isEmpty();
  }

  static Reading<Rebalanced> answer(Reading<Rebalance.Asked> asked, Rebalance useCase, long steps) {
    if (asked instanceof Reading.Bad<Rebalance.Asked> bad) {
      return new Reading.Bad<>(bad.issues(), bad.more());
    }
    Rebalanced result = useCase.rebalance(value(asked), steps);
    if (result instanceof Rebalanced.Refused refused) {
      return Report.bad(ChangeReader.issues(refused.faults()));
    }
    if (result instanceof Rebalanced.Unfit unfit) {
      return new Reading.Bad<>(afterChanges(unfit.issues()), false);
    }
    return new Reading.Read<>(result);
  }

  /** The changed trip is not in the request, so its places are told in words. */
  private static List<Issue> afterChanges(List<Issue> issues) {
    List<Issue> told = new ArrayList<>();
    for (Issue issue : issues.subList(0, Math.min(issues.size(), Limits.ISSUES))) {
      told.add(
          new Issue(
              issue.code(),
              "/changes",
              issue.value(),
              "After the changes, at " + issue.pointer() + ": " + issue.message(),
              issue.remedy()));
    }
    return told;
  }
}
