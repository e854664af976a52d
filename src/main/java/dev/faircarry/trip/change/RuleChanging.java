package dev.faircarry.trip.change;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * The rules of a trip while it changes: whoever or whatever is gone is taken out of them, and a
 * rule that has nothing left to say is dropped. Both are told.
 */
final class RuleChanging {
  private List<Rule> rules;
  private final BiConsumer<ChangeNote.Kind, String> notes;

  RuleChanging(List<Rule> rules, BiConsumer<ChangeNote.Kind, String> notes) {
    this.rules = new ArrayList<>(rules);
    this.notes = notes;
  }

  List<Rule> rules() {
    return rules;
  }

  boolean add(Rule rule) {
    return rules.add(rule);
  }

  boolean remove(String id) {
    return rules.removeIf(rule -> rule.id().equals(id));
  }

  void hikerGone(Hiker gone) {
    String id = gone.id();
    each(
        gone.name() + ", who does not come",
        new Rewriting(
            refs -> refs,
            ids -> ids.stream().filter(each -> !each.equals(id)).toList(),
            parties -> parties));
  }

  void partyGone(String party) {
    each(
        "party “" + party + "”, to which nobody belongs any more",
        new Rewriting(
            refs -> refs,
            ids -> ids,
            parties -> parties.stream().filter(each -> !each.equals(party)).toList()));
  }

  /** A whole item with all its parts, or one part. */
  void pieceGone(PieceRef gone) {
    Predicate<PieceRef> left =
        ref -> gone.part().isEmpty() ? !ref.item().equals(gone.item()) : !ref.equals(gone);
    each(
        "“" + gone.text() + "”, which is gone",
        new Rewriting(refs -> refs.stream().filter(left).toList(), ids -> ids, parties -> parties));
  }

  /** The new item stands where the old stood; its parts keep their place if they have the ids. */
  void itemReplaced(String old, SharedItem by) {
    Function<PieceRef, PieceRef> renamed =
        ref -> {
          boolean kept =
              ref.part().isEmpty()
                  || (by.form() instanceof Form.Parts parts
                      && parts.parts().stream().anyMatch(p -> ref.part().get().equals(p.id())));
          return kept ? new PieceRef(by.id(), ref.part()) : PieceRef.item(by.id());
        };
    rules =
        new ArrayList<>(
            rules.stream()
                .map(
                    rule ->
                        rule.match(
                                new Rewriting(
                                    refs -> replaced(refs, old, renamed),
                                    ids -> ids,
                                    parties -> parties))
                            .orElse(rule))
                .toList());
  }

  private static List<PieceRef> replaced(
      List<PieceRef> refs, String old, Function<PieceRef, PieceRef> renamed) {
    LinkedHashSet<PieceRef> now = new LinkedHashSet<>();
    for (PieceRef ref : refs) {
      now.add(ref.item().equals(old) ? renamed.apply(ref) : ref);
    }
    // The whole item named beside one of its parts would name that part twice.
    return now.stream()
        .filter(ref -> ref.part().isEmpty() || !now.contains(PieceRef.item(ref.item())))
        .toList();
  }

  private void each(String who, Rewriting rewriting) {
    List<Rule> left = new ArrayList<>();
    for (Rule rule : rules) {
      Optional<Rule> now = rule.match(rewriting);
      if (now.isEmpty()) {
        notes.accept(
            ChangeNote.Kind.RULE_DROPPED,
            "Rule “" + rule.id() + "” named " + who + ", and is dropped.");
      } else if (!now.get().equals(rule)) {
        notes.accept(
            ChangeNote.Kind.RULE_NARROWED, "Rule “" + rule.id() + "” no longer names " + who + ".");
      }
      now.ifPresent(left::add);
    }
    rules = left;
  }

  /** A rule with other lists; empty when a list that said something has nothing left. */
  private record Rewriting(
      Function<List<PieceRef>, List<PieceRef>> pieces,
      Function<List<String>, List<String>> hikers,
      Function<List<String>, List<String>> parties)
      implements Rule.Cases<Optional<Rule>> {

    @Override
    public Optional<Rule> pinned(Rule.Pinned rule) {
      List<PieceRef> refs = pieces.apply(rule.pieces());
      boolean there = !hikers.apply(List.of(rule.hiker())).isEmpty();
      return there && !refs.isEmpty()
          ? Optional.of(new Rule.Pinned(rule.id(), refs, rule.hiker()))
          : Optional.empty();
    }

    @Override
    public Optional<Rule> only(Rule.Only rule) {
      List<PieceRef> refs = pieces.apply(rule.pieces());
      List<String> ids = hikers.apply(rule.hikers());
      return refs.isEmpty() || ids.isEmpty()
          ? Optional.empty()
          : Optional.of(new Rule.Only(rule.id(), refs, ids));
    }

    @Override
    public Optional<Rule> barred(Rule.Barred rule) {
      List<PieceRef> refs = pieces.apply(rule.pieces());
      List<String> ids = hikers.apply(rule.hikers());
      return refs.isEmpty() || ids.isEmpty()
          ? Optional.empty()
          : Optional.of(new Rule.Barred(rule.id(), refs, ids));
    }

    @Override
    public Optional<Rule> together(Rule.Together rule) {
      List<PieceRef> refs = pieces.apply(rule.pieces());
      boolean nothing = refs.isEmpty() || (refs.size() == 1 && rule.pieces().size() > 1);
      // One whole reference left over from several would bind its parts, which nobody asked for.
      return nothing ? Optional.empty() : Optional.of(new Rule.Together(rule.id(), refs));
    }

    @Override
    public Optional<Rule> apart(Rule.Apart rule) {
      List<PieceRef> refs = pieces.apply(rule.pieces());
      return refs.size() < Math.min(2, rule.pieces().size())
          ? Optional.empty()
          : Optional.of(new Rule.Apart(rule.id(), refs));
    }

    @Override
    public Optional<Rule> partyHas(Rule.PartyHas rule) {
      List<String> named = parties.apply(rule.parties());
      // An empty list means all parties, so a rule that named only this one has to go.
      return named.isEmpty() && !rule.parties().isEmpty()
          ? Optional.empty()
          : Optional.of(new Rule.PartyHas(rule.id(), rule.covers(), named, rule.atLeast()));
    }
  }
}
