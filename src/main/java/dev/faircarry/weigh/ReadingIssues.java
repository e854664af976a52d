package dev.faircarry.weigh;

import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.PlainText;
import dev.faircarry.check.Pointer;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import java.util.List;
import java.util.Optional;

/** What is wrong with readings, however they were read: each must be of something on the trip. */
public final class ReadingIssues {
  private final Trip trip;
  private final Issues issues;

  private ReadingIssues(Trip trip, Issues issues) {
    this.trip = trip;
    this.issues = issues;
  }

  /**
   * Notes all issues of a list of readings.
   *
   * @param trip a trip without issues
   * @param list the place of the list
   */
  public static void find(Trip trip, List<ScaleReading> readings, Pointer list, Issues issues) {
    ReadingIssues each = new ReadingIssues(trip, issues);
    for (int i = 0; i < readings.size(); i++) {
      each.find(readings.get(i), list.at(i));
    }
  }

  /** Whether a trip has what lay on the scale. */
  public static boolean has(Trip trip, Weighed weighed) {
    Issues issues = new Issues();
    new ReadingIssues(trip, issues).subject(weighed, Pointer.ROOT);
    return issues.list().isEmpty();
  }

  private void find(ScaleReading reading, Pointer at) {
    subject(reading.weighed(), at);
    long mass = reading.mass().milligrams();
    if (mass < 1 || mass > WeighLimits.MASS_MILLIGRAMS) {
      issues.add(
          IssueCode.OUT_OF_RANGE,
          at.at("mass"),
          reading.mass().entered(),
          "What lies on the scale weighs more than nothing and at most "
              + WeighLimits.MASS_MILLIGRAMS / 1_000_000L
              + " kg.");
    }
    text(reading.at(), at.at("at"));
    text(reading.source(), at.at("source"));
  }

  private void subject(Weighed weighed, Pointer at) {
    Optional<Hiker> hiker =
        weighed.of().flatMap(id -> trip.hikers().stream().filter(h -> h.id().equals(id)).findAny());
    if (weighed.of().isPresent() && hiker.isEmpty()) {
      String id = weighed.of().get();
      issues.add(IssueCode.UNKNOWN_HIKER, at.at("hiker"), id, named(id) + "is not on the trip.");
    } else if (weighed instanceof Weighed.OfKit kit
        && hiker.get().kit().stream().noneMatch(k -> k.id().equals(kit.item()))) {
      issues.add(
          IssueCode.UNKNOWN_THING,
          at.at("item"),
          kit.item(),
          named(kit.item()) + "is not in that kit.",
          "Name the id of a thing in the hiker's kit.");
    } else if (weighed instanceof Weighed.Piece piece) {
      piece(piece.piece(), at.at("piece"));
    }
  }

  private void piece(PieceRef piece, Pointer at) {
    Optional<SharedItem> item =
        trip.shared().stream().filter(s -> s.id().equals(piece.item())).findAny();
    if (item.isPresent() && piece.part().isEmpty() && item.get().form() instanceof Form.Parts) {
      issues.add(
          IssueCode.UNKNOWN_PIECE,
          at,
          piece.text(),
          named(piece.text()) + "comes in parts, each with its own mass.",
          "Name a part, as \"item/part\".");
    } else if (item.isEmpty() || !Stated.isPieceOf(item.get(), piece)) {
      issues.add(
          IssueCode.UNKNOWN_PIECE,
          at,
          piece.text(),
          named(piece.text()) + "is not among the shared things.");
    }
  }

  private static String named(String id) {
    return "“" + Issues.shortened(id) + "” ";
  }

  /** Time and source may be left out. */
  private void text(String text, Pointer at) {
    Optional<IssueCode> fault =
        text.isEmpty() ? Optional.empty() : PlainText.fault(text, WeighLimits.TEXT_LENGTH);
    fault.ifPresent(
        code ->
            issues.add(
                code,
                at,
                text,
                code.meaning(),
                "Write at most " + WeighLimits.TEXT_LENGTH + " printable characters."));
  }
}
