package dev.faircarry.check;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is wrong with the rules as stated: whom and what they name. */
final class RuleIssues implements Rule.Cases<Boolean> {
  private final Issues issues;
  private final Ranges ranges;
  private final Set<String> hikers;
  private final Set<String> parties = new HashSet<>();

  /** Item id to the ids of its parts, none for items not in parts. */
  private final Map<String, Set<String>> items = new HashMap<>();

  private Pointer at = Pointer.ROOT;

  private RuleIssues(Trip trip, Issues issues, Ranges ranges) {
    this.issues = issues;
    this.ranges = ranges;
    this.hikers = new HashSet<>(TripIssues.ids(trip.hikers(), Hiker::id));
    trip.hikers().forEach(h -> h.party().ifPresent(parties::add));
    for (SharedItem item : trip.shared()) {
      Set<String> parts =
          item.form() instanceof Form.Parts form
              ? new HashSet<>(TripIssues.ids(form.parts(), Form.Part::id))
              : Set.of();
      items.put(item.id(), parts);
    }
  }

  static void find(Trip trip, Issues issues, Ranges ranges) {
    Pointer list = Pointer.ROOT.at("rules");
    if (!ranges.size(list, trip.rules(), Limits.RULES)) {
      return;
    }
    ranges.uniqueIds(list, TripIssues.ids(trip.rules(), Rule::id), "rule");
    RuleIssues each = new RuleIssues(trip, issues, ranges);
    for (int i = 0; i < trip.rules().size(); i++) {
      each.at = list.at(i);
      ranges.id(each.at.at("id"), trip.rules().get(i).id());
      trip.rules().get(i).match(each);
    }
  }

  @Override
  public Boolean pinned(Rule.Pinned rule) {
    pieces(rule.pieces());
    return hiker(at.at("hiker"), rule.hiker());
  }

  @Override
  public Boolean only(Rule.Only rule) {
    boolean piecesFine = pieces(rule.pieces());
    return hikers(rule.hikers()) && piecesFine;
  }

  @Override
  public Boolean barred(Rule.Barred rule) {
    boolean piecesFine = pieces(rule.pieces());
    return hikers(rule.hikers()) && piecesFine;
  }

  @Override
  public Boolean together(Rule.Together rule) {
    return pieces(rule.pieces());
  }

  @Override
  public Boolean apart(Rule.Apart rule) {
    if (!pieces(rule.pieces())) {
      return false;
    }
    Map<String, Boolean> wholeNamed = new HashMap<>();
    for (int i = 0; i < rule.pieces().size(); i++) {
      PieceRef ref = rule.pieces().get(i);
      boolean whole = ref.part().isEmpty();
      Boolean earlier = wholeNamed.putIfAbsent(ref.item(), whole);
      if (earlier != null && (earlier || whole)) {
        issues.add(
            IssueCode.OVERLAP,
            at.at("pieces").at(i),
            ref.text(),
            "\"" + Issues.shortened(ref.text()) + "\" shares pieces with an earlier reference.");
      }
    }
    return true;
  }

  @Override
  public Boolean partyHas(Rule.PartyHas rule) {
    ranges.word(at.at("covers"), rule.covers());
    ranges.number(at.at("atLeast"), rule.atLeast(), 1, Limits.PIECES);
    Pointer list = at.at("parties");
    if (!ranges.size(list, rule.parties(), Limits.NAMES_PER_RULE)) {
      return false;
    }
    for (int i = 0; i < rule.parties().size(); i++) {
      if (!parties.contains(rule.parties().get(i))) {
        issues.add(
            IssueCode.UNKNOWN_PARTY,
            list.at(i),
            rule.parties().get(i),
            "Nobody belongs to a party \"" + Issues.shortened(rule.parties().get(i)) + "\".");
      }
    }
    ranges.uniqueNames(list, rule.parties());
    return true;
  }

  /** Whether the list is fine. */
  private boolean pieces(List<PieceRef> pieces) {
    Pointer list = at.at("pieces");
    if (!ranges.notEmpty(list, pieces) || !ranges.size(list, pieces, Limits.NAMES_PER_RULE)) {
      return false;
    }
    boolean fine = true;
    for (int i = 0; i < pieces.size(); i++) {
      PieceRef ref = pieces.get(i);
      if (!known(ref)) {
        fine = false;
        String name = Issues.shortened(ref.text());
        issues.add(
            IssueCode.UNKNOWN_PIECE,
            list.at(i),
            ref.text(),
            "The trip has no shared piece \"" + name + "\".");
      }
    }
    List<String> names = TripIssues.ids(pieces, PieceRef::text);
    ranges.uniqueNames(list, names);
    return fine && new HashSet<>(names).size() == names.size();
  }

  private boolean known(PieceRef ref) {
    Set<String> parts = items.get(ref.item());
    return parts != null && (ref.part().isEmpty() || parts.contains(ref.part().get()));
  }

  private boolean hikers(List<String> named) {
    Pointer list = at.at("hikers");
    if (!ranges.notEmpty(list, named) || !ranges.size(list, named, Limits.NAMES_PER_RULE)) {
      return false;
    }
    boolean fine = true;
    for (int i = 0; i < named.size(); i++) {
      fine &= hiker(list.at(i), named.get(i));
    }
    ranges.uniqueNames(list, named);
    return fine;
  }

  private boolean hiker(Pointer place, String id) {
    if (hikers.contains(id)) {
      return true;
    }
    issues.add(
        IssueCode.UNKNOWN_HIKER,
        place,
        id,
        "The trip has no hiker \"" + Issues.shortened(id) + "\".");
    return false;
  }
}
