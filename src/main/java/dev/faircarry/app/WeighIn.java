package dev.faircarry.app;

import dev.faircarry.check.Issue;
import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.check.TripIssues;
import dev.faircarry.split.Split;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import dev.faircarry.trip.change.Changed;
import dev.faircarry.trip.change.TripChanging;
import dev.faircarry.weigh.ReadingIssues;
import dev.faircarry.weigh.Reconciled;
import dev.faircarry.weigh.Reconciliation;
import dev.faircarry.weigh.ScaleReading;
import dev.faircarry.weigh.Tolerance;
import dev.faircarry.weigh.Weighed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Sets readings of a scale against a trip and its split, and takes them over where asked to. */
public final class WeighIn {
  private WeighIn() {}

  /** Which readings are taken over. */
  public sealed interface Accept {
    /** None: only tell. */
    record Nothing() implements Accept {}

    /** All that are not questioned. */
    record Everything() implements Accept {}

    /**
     * Those of some subjects.
     *
     * @param subjects as {@link Weighed#text()} names them
     */
    record These(List<String> subjects) implements Accept {
      public These {
        subjects = List.copyOf(subjects);
      }
    }
  }

  /**
   * A question.
   *
   * @param trip a trip without issues
   * @param split who carries what while it is weighed
   */
  public record Asked(
      Trip trip, Split split, List<ScaleReading> readings, Tolerance tolerance, Accept accept) {
    public Asked {
      readings = List.copyOf(readings);
    }
  }

  /** Answers, or says what is wrong with the readings; places as in the document of the request. */
  public static WeighedIn answer(Asked asked) {
    Issues issues = new Issues();
    ReadingIssues.find(asked.trip(), asked.readings(), Pointer.ROOT.at("readings"), issues);
    if (!issues.list().isEmpty()) {
      return new WeighedIn.Unfit(issues.list());
    }
    List<Reconciled> all =
        Reconciliation.of(asked.trip(), asked.split(), asked.readings(), asked.tolerance());
    List<Reconciled> taken = taken(asked, all);
    if (asked.accept() instanceof Accept.These these) {
      wrongNames(these, all, taken, issues);
      if (!issues.list().isEmpty()) {
        return new WeighedIn.Unfit(issues.list());
      }
    }
    return told(asked, all, taken);
  }

  private static WeighedIn told(Asked asked, List<Reconciled> all, List<Reconciled> taken) {
    Optional<WeighedIn.Accepted> accepted = Optional.empty();
    if (!(asked.accept() instanceof Accept.Nothing)) {
      Changed changed = TripChanging.apply(asked.trip(), changes(taken));
      // Refusal would mean that a change was made up for something the trip does not have.
      Changed.Made made = (Changed.Made) changed;
      List<Issue> wrong = TripIssues.of(made.trip());
      if (!wrong.isEmpty()) {
        return new WeighedIn.Unfit(afterwards(wrong));
      }
      accepted = Optional.of(new WeighedIn.Accepted(made.trip(), made.notes()));
    }
    TripNames names = new TripNames(asked.trip());
    return new WeighedIn.Told(
        asked.trip().name(),
        asked.tolerance(),
        all.stream()
            .map(each -> new WeighedIn.Line(name(asked.trip(), names, each.weighed()), each))
            .toList(),
        changes(all),
        accepted);
  }

  private static List<Change> changes(List<Reconciled> reconciled) {
    return reconciled.stream().flatMap(each -> each.changes().stream()).toList();
  }

  /** What is taken over is worked out from these readings alone: others are as if not there. */
  private static List<Reconciled> taken(Asked asked, List<Reconciled> all) {
    if (!(asked.accept() instanceof Accept.These these)) {
      return all;
    }
    Set<String> subjects = Set.copyOf(these.subjects());
    List<ScaleReading> readings =
        asked.readings().stream().filter(r -> subjects.contains(r.weighed().text())).toList();
    return Reconciliation.of(asked.trip(), asked.split(), readings, asked.tolerance());
  }

  private static void wrongNames(
      Accept.These these, List<Reconciled> all, List<Reconciled> taken, Issues issues) {
    Pointer list = Pointer.ROOT.at("accept");
    for (int i = 0; i < these.subjects().size(); i++) {
      String subject = these.subjects().get(i);
      Optional<Reconciled> found =
          taken.stream().filter(r -> r.weighed().text().equals(subject)).findAny();
      if (found.isEmpty()) {
        issues.add(
            IssueCode.UNKNOWN_THING,
            list.at(i),
            subject,
            "No reading is of “" + Issues.shortened(subject) + "”.",
            "Use one of "
                + all.stream().map(r -> r.weighed().text()).collect(Collectors.joining(", "))
                + ".");
      } else if (found.get().question().isPresent()) {
        issues.add(
            IssueCode.CONTRADICTION,
            list.at(i),
            subject,
            "This cannot be taken over as it stands. " + found.get().question().get(),
            "Weigh it again, or say \"confirmed\": true if it is so.");
      }
    }
  }

  /** The changed trip is not in the request, so its places are told in words. */
  private static List<Issue> afterwards(List<Issue> issues) {
    List<Issue> told = new ArrayList<>();
    for (Issue issue : issues) {
      told.add(
          new Issue(
              issue.code(),
              "/readings",
              issue.value(),
              "With the readings, at " + issue.pointer() + ": " + issue.message(),
              issue.remedy()));
    }
    return told;
  }

  private static String name(Trip trip, TripNames names, Weighed weighed) {
    if (weighed instanceof Weighed.WholePack pack) {
      return names.hiker(pack.hiker()) + "’s pack, packed";
    }
    if (weighed instanceof Weighed.EmptyPack pack) {
      return names.hiker(pack.hiker()) + "’s pack, empty";
    }
    if (weighed instanceof Weighed.OfKit kit) {
      String item =
          trip.hikers().stream()
              .filter(h -> h.id().equals(kit.hiker()))
              .flatMap(h -> h.kit().stream())
              .filter(k -> k.id().equals(kit.item()))
              .map(KitItem::name)
              .findFirst()
              .orElse(kit.item());
      return names.hiker(kit.hiker()) + "’s " + item;
    }
    return names.piece(((Weighed.Piece) weighed).piece());
  }
}
