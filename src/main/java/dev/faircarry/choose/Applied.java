package dev.faircarry.choose;

import dev.faircarry.choose.Candidate.Kind;
import dev.faircarry.trip.Contains;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.plan.Amount;
import dev.faircarry.trip.plan.Need;
import dev.faircarry.trip.plan.Offer;
import dev.faircarry.trip.plan.Plan;
import dev.faircarry.trip.plan.Taking;
import dev.faircarry.unit.Volume;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * A trip after a choice.
 *
 * @param trip with what is taken, without what stays; the offers it took are offers no more
 * @param changedRules ids of rules that named something that stays and so lost it, or fell away
 */
public record Applied(Trip trip, List<String> changedRules) {
  public Applied {
    changedRules = List.copyOf(changedRules);
  }

  /** Makes the choice. */
  public static Applied to(Trip trip, Question question, Point point) {
    Map<String, Integer> counts = new HashMap<>();
    Set<String> gone = new HashSet<>();
    for (int i = 0; i < question.candidates().size(); i++) {
      Candidate candidate = question.candidates().get(i);
      if (candidate.kind() == Kind.OFFER) {
        counts.put(candidate.ref(), point.counts().get(i));
      } else if (point.counts().get(i) == 0) {
        gone.add(candidate.ref());
      }
    }
    Taking taking = trip.plan().flatMap(Plan::taking).orElse(Taking.EMPTY);
    List<SharedItem> shared = new ArrayList<>();
    for (SharedItem item : trip.shared()) {
      if (!gone.contains(item.id())) {
        shared.add(item);
      }
    }
    List<Offer> open = new ArrayList<>();
    for (Offer offer : taking.offers()) {
      int count = counts.getOrDefault(offer.id(), 0);
      if (count == 0) {
        open.add(offer);
      } else if (offer.forHiker().isEmpty()) {
        shared.addAll(shared(offer, count));
      }
    }
    List<Hiker> hikers = new ArrayList<>();
    for (Hiker hiker : trip.hikers()) {
      hikers.add(equipped(hiker, gone, taking, counts));
    }
    List<String> changed = new ArrayList<>();
    List<Rule> rules = new ArrayList<>();
    for (Rule rule : trip.rules()) {
      Optional<Rule> kept = rule.match(new WithoutPieces(gone));
      if (!kept.equals(Optional.of(rule))) {
        changed.add(rule.id());
      }
      kept.ifPresent(rules::add);
    }
    Optional<Plan> plan =
        trip.plan()
            .map(
                p ->
                    new Plan(
                        p.route(),
                        p.food(),
                        p.fuel(),
                        p.water(),
                        p.goals(),
                        p.taking()
                            .map(
                                t ->
                                    new Taking(
                                        t.needs(), open, t.budget(), without(t.keep(), gone)))));
    return new Applied(
        new Trip(trip.name(), trip.days(), trip.policy(), hikers, shared, rules, plan), changed);
  }

  private static List<String> without(List<String> refs, Set<String> gone) {
    return refs.stream().filter(r -> !gone.contains(r)).toList();
  }

  private static Hiker equipped(
      Hiker hiker, Set<String> gone, Taking taking, Map<String, Integer> counts) {
    List<KitItem> kit = new ArrayList<>();
    for (KitItem item : hiker.kit()) {
      if (!gone.contains(hiker.id() + "/" + item.id())) {
        kit.add(item);
      }
    }
    for (Offer offer : taking.offers()) {
      int count = counts.getOrDefault(offer.id(), 0);
      if (offer.forHiker().equals(Optional.of(hiker.id()))) {
        for (int n = 1; n <= count; n++) {
          kit.add(kit(offer, count == 1 ? offer.id() : offer.id() + "-" + n));
        }
      }
    }
    return new Hiker(
        hiker.id(),
        hiker.name(),
        hiker.bodyMass(),
        hiker.targetLoad(),
        hiker.targetFraction(),
        hiker.capFraction(),
        hiker.capLoad(),
        hiker.maxPieces(),
        hiker.party(),
        hiker.minor(),
        hiker.leavesAfterDay(),
        hiker.pack(),
        kit);
  }

  private static KitItem kit(Offer offer, String id) {
    return new KitItem(
        id,
        offer.name(),
        offer.mass(),
        offer.massFrom(),
        volume(offer),
        offer.price(),
        offer.stow(),
        false,
        false,
        covers(offer),
        Optional.empty(),
        contains(offer));
  }

  /** Several that hold something are items of their own, because units of one item hold nothing. */
  private static List<SharedItem> shared(Offer offer, int count) {
    if (count > 1 && (offer.contains().isPresent() || room(offer).isPresent())) {
      List<SharedItem> each = new ArrayList<>();
      for (int n = 1; n <= count; n++) {
        each.add(shared(offer, offer.id() + "-" + n, whole(offer)));
      }
      return each;
    }
    Form counted =
        new Form.Counted(
            new Form.Quantity.Fixed(count),
            offer.mass(),
            offer.massFrom(),
            offer.volume(),
            offer.stow(),
            Optional.empty());
    return List.of(shared(offer, offer.id(), count == 1 ? whole(offer) : counted));
  }

  private static Form whole(Offer offer) {
    return new Form.Whole(
        offer.mass(),
        offer.massFrom(),
        volume(offer),
        offer.stow(),
        Optional.empty(),
        contains(offer));
  }

  private static SharedItem shared(Offer offer, String id, Form form) {
    OptionalInt sleeps = OptionalInt.empty();
    for (Offer.Cover cover : offer.covers()) {
      if (cover.need().equals(Need.SLEEPING)) {
        sleeps = OptionalInt.of((int) cover.amount().size());
      }
    }
    return new SharedItem(
        id,
        offer.name(),
        offer.owner(),
        covers(offer),
        sleeps,
        offer.price(),
        Optional.empty(),
        List.of(),
        form);
  }

  /** How much the thing holds of what it is taken for: a pot of 2.1 L. */
  private static Optional<Contains> room(Offer offer) {
    return offer.covers().stream()
        .filter(cover -> cover.amount().isRoom())
        .findFirst()
        .map(c -> new Contains(c.need(), ((Amount.Room) c.amount()).volume()));
  }

  /** The stated volume; without one, a thing is at least as large as what it holds. */
  private static Optional<Volume> volume(Offer offer) {
    return offer.volume().or(() -> room(offer).map(Contains::volume));
  }

  /** What it holds, where that is not its stated volume anyway. */
  private static Optional<Contains> contains(Offer offer) {
    return offer
        .contains()
        .or(() -> room(offer).filter(r -> !Optional.of(r.volume()).equals(volume(offer))));
  }

  private static List<String> covers(Offer offer) {
    return offer.covers().stream()
        .map(Offer.Cover::need)
        .filter(n -> !n.equals(Need.SLEEPING))
        .distinct()
        .toList();
  }

  /** A rule without what stays at home; nothing when it then says nothing. */
  private record WithoutPieces(Set<String> gone) implements Rule.Cases<Optional<Rule>> {
    private List<PieceRef> left(List<PieceRef> pieces) {
      return pieces.stream().filter(p -> !gone.contains(p.item())).toList();
    }

    @Override
    public Optional<Rule> pinned(Rule.Pinned rule) {
      List<PieceRef> left = left(rule.pieces());
      return left.isEmpty()
          ? Optional.empty()
          : Optional.of(new Rule.Pinned(rule.id(), left, rule.hiker()));
    }

    @Override
    public Optional<Rule> only(Rule.Only rule) {
      List<PieceRef> left = left(rule.pieces());
      return left.isEmpty()
          ? Optional.empty()
          : Optional.of(new Rule.Only(rule.id(), left, rule.hikers()));
    }

    @Override
    public Optional<Rule> barred(Rule.Barred rule) {
      List<PieceRef> left = left(rule.pieces());
      return left.isEmpty()
          ? Optional.empty()
          : Optional.of(new Rule.Barred(rule.id(), left, rule.hikers()));
    }

    @Override
    public Optional<Rule> together(Rule.Together rule) {
      List<PieceRef> left = left(rule.pieces());
      return left.size() < rule.pieces().size() && left.size() < 2
          ? Optional.empty()
          : Optional.of(new Rule.Together(rule.id(), left));
    }

    @Override
    public Optional<Rule> apart(Rule.Apart rule) {
      List<PieceRef> left = left(rule.pieces());
      return left.size() < rule.pieces().size() && left.size() < 2
          ? Optional.empty()
          : Optional.of(new Rule.Apart(rule.id(), left));
    }

    @Override
    public Optional<Rule> partyHas(Rule.PartyHas rule) {
      return Optional.of(rule);
    }
  }
}
