package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.access.Sight;
import dev.faircarry.app.CheckDeparture;
import dev.faircarry.check.Essentials;
import dev.faircarry.check.Issue;
import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.check.Takers;
import dev.faircarry.check.TripIssues;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import dev.faircarry.trip.change.Changed;
import dev.faircarry.trip.change.TripChanging;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Questions before leaving: can we go like this, and who takes one more thing. */
public final class DepartureExchange {
  private static final Map<String, Essentials.Kind> SYSTEMS = Words.of(Essentials.Kind.values());

  private DepartureExchange() {}

  /** Reads {@code {"trip", "split", "madeFor", "personalEssentials"}}. */
  public static Reading<CheckDeparture.Answer> departure(
      byte[] document, CheckDeparture useCase, long effortSteps) {
    Issues issues = new Issues();
    return JsonText.read(document, issues)
        .flatMap(root -> Entry.of(root, Pointer.ROOT, issues))
        .map(
            entry -> {
              Reading<Trip> trip = RebalanceExchange.tripIn(entry);
              Reading<Split> split = RebalanceExchange.splitIn(entry);
              Optional<Reading<Trip>> madeFor =
                  entry
                      .find("madeFor")
                      .map(n -> TripReader.read(n, Pointer.ROOT.at("madeFor"), new Issues()));
              Essentials essentials = essentials(entry);
              entry.done();
              List<Reading<?>> parts = new ArrayList<>(List.of(trip, split));
              madeFor.ifPresent(parts::add);
              return Report.together(
                  issues,
                  parts,
                  () ->
                      useCase.check(
                          new CheckDeparture.Asked(
                              RebalanceExchange.value(trip),
                              RebalanceExchange.value(split),
                              madeFor.map(RebalanceExchange::value),
                              essentials),
                          effortSteps));
            })
        .orElseGet(() -> Report.bad(issues));
  }

  /**
   * The same from documents of their own.
   *
   * @param madeFor the trip document the split was made for, if that is known
   */
  public static Reading<CheckDeparture.Answer> departure(
      byte[] trip,
      byte[] split,
      Optional<byte[]> madeFor,
      CheckDeparture useCase,
      long effortSteps) {
    Reading<Trip> readTrip = TripReader.read(trip);
    if (readTrip instanceof Reading.Bad<Trip> bad) {
      return new Reading.Bad<>(bad.issues(), bad.more());
    }
    Optional<Reading<Trip>> readMadeFor = madeFor.map(TripReader::read);
    if (readMadeFor.isPresent() && readMadeFor.get() instanceof Reading.Bad<Trip> bad) {
      return new Reading.Bad<>(bad.issues(), bad.more());
    }
    return SplitReader.read(split)
        .map(
            made ->
                useCase.check(
                    new CheckDeparture.Asked(
                        RebalanceExchange.value(readTrip),
                        made,
                        readMadeFor.map(RebalanceExchange::value),
                        Essentials.DEFAULT),
                    effortSteps));
  }

  static Essentials essentials(Entry entry) {
    Optional<List<String>> names = entry.texts("personalEssentials", SYSTEMS.size());
    if (names.isEmpty()) {
      return Essentials.DEFAULT;
    }
    Set<Essentials.Kind> personal = new HashSet<>();
    for (int i = 0; i < names.get().size(); i++) {
      String name = names.get().get(i);
      if (SYSTEMS.containsKey(name)) {
        personal.add(SYSTEMS.get(name));
      } else {
        entry
            .issues()
            .add(
                IssueCode.UNKNOWN_WORD,
                entry.at().at("personalEssentials").at(i),
                name,
                "This is none of the ten systems.",
                "Use one of " + String.join(", ", SYSTEMS.keySet()) + ".");
      }
    }
    return new Essentials(personal);
  }

  /**
   * Reads {@code {"trip", "split", "piece" or "item", "units"}}: a piece that is with nobody, or an
   * item that the trip does not have yet.
   */
  public static Reading<byte[]> takers(byte[] document) {
    Issues issues = new Issues();
    return JsonText.read(document, issues)
        .flatMap(root -> Entry.of(root, Pointer.ROOT, issues))
        .map(
            entry ->
                takers(
                    entry,
                    RebalanceExchange.tripIn(entry),
                    RebalanceExchange.splitIn(entry),
                    Sight.ALL))
        .orElseGet(() -> Report.bad(issues));
  }

  static Reading<byte[]> takers(
      Entry entry, Reading<Trip> trip, Reading<Split> split, Sight sight) {
    Issues issues = entry.issues();
    Optional<JsonNode> node = entry.find("item");
    Optional<SharedItem> extra =
        node.map(
            n ->
                new SharedReader(new Ids("s", List.of(n)))
                    .read(n, Pointer.ROOT.at("item"), issues));
    Optional<PieceRef> named = entry.text("piece").map(PieceRef::of);
    int units = entry.whole("units", 1).orElse(1);
    entry.done();
    if (named.isEmpty() && extra.isEmpty()) {
      entry.missing("piece", "");
    } else if (named.isPresent() && extra.isPresent()) {
      issues.add(
          IssueCode.CONFLICTING_FIELDS,
          Pointer.ROOT.at("item"),
          "piece, item",
          "A piece of the trip and a new item are asked for at once.",
          "Ask for one of them.");
    }
    PieceRef piece = named.orElseGet(() -> PieceRef.item(extra.map(SharedItem::id).orElse("")));
    if (!(trip instanceof Reading.Read<Trip> read)
        || !(split instanceof Reading.Read<Split>)
        || !issues.list().isEmpty()) {
      return Report.together(issues, List.of(trip, split), () -> new byte[0]);
    }
    Trip now = extra.map(item -> with(read.value(), item, issues)).orElse(read.value());
    Pointer asked = Pointer.ROOT.at(extra.isPresent() ? "item" : "piece");
    if (issues.list().isEmpty() && !isPiece(now, piece)) {
      issues.add(
          IssueCode.UNKNOWN_PIECE,
          asked,
          piece.text(),
          extra.isPresent()
              ? "The item comes in parts, and each of them is a piece of its own."
              : "The trip has no such piece.",
          "Name a shared item, or a part as item/part.");
    }
    if (units < 1) {
      issues.add(
          IssueCode.OUT_OF_RANGE,
          Pointer.ROOT.at("units"),
          String.valueOf(units),
          "Less than one unit is asked for.");
    }
    if (!issues.list().isEmpty()) {
      return Report.bad(issues);
    }
    return new Reading.Read<>(
        TakersWriter.write(
            now, Takers.of(now, RebalanceExchange.value(split), piece, units), sight));
  }

  /** The trip with one more item; what is wrong with that is noted at the item. */
  private static Trip with(Trip trip, SharedItem item, Issues issues) {
    Pointer at = Pointer.ROOT.at("item");
    Changed changed = TripChanging.apply(trip, List.of(new Change.ItemAdded(item)));
    if (!(changed instanceof Changed.Made made)) {
      issues.add(IssueCode.DUPLICATE_ID, at.at("id"), item.id(), "The trip has it already.");
      return trip;
    }
    String last = "/shared/" + (made.trip().shared().size() - 1);
    for (Issue issue : TripIssues.of(made.trip())) {
      String below =
          issue.pointer().startsWith(last) ? issue.pointer().substring(last.length()) : "";
      issues.add(
          issue.code(), new Pointer(at + below), issue.value(), issue.message(), issue.remedy());
    }
    return made.trip();
  }

  private static boolean isPiece(Trip trip, PieceRef piece) {
    return trip.shared().stream()
        .filter(s -> s.id().equals(piece.item()))
        .anyMatch(s -> RebalanceExchange.isPiece(s, piece));
  }
}
