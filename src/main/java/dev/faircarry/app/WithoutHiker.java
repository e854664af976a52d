package dev.faircarry.app;

import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.plan.Goals;
import dev.faircarry.trip.plan.Offer;
import dev.faircarry.trip.plan.Plan;
import dev.faircarry.trip.plan.Taking;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A trip from which a hiker is taken with everything that names them. */
final class WithoutHiker {
  private final String gone;
  private final Set<String> parties;

  private WithoutHiker(String gone, List<Hiker> stay) {
    this.gone = gone;
    this.parties =
        stay.stream().flatMap(h -> h.party().stream()).collect(Collectors.toUnmodifiableSet());
  }

  /**
   * The trip without the hiker. What they own belongs to nobody; rules lose their name, and go when
   * no name is left in them; so do rules about parties that nobody belongs to any more.
   */
  static Trip of(Trip trip, String hiker) {
    List<Hiker> stay = trip.hikers().stream().filter(h -> !h.id().equals(hiker)).toList();
    WithoutHiker without = new WithoutHiker(hiker, stay);
    return new Trip(
        trip.name(),
        trip.days(),
        trip.policy(),
        stay,
        trip.shared().stream().map(without::item).toList(),
        trip.rules().stream().flatMap(rule -> without.rule(rule).stream()).toList(),
        trip.plan().map(without::plan));
  }

  private SharedItem item(SharedItem item) {
    return new SharedItem(
        item.id(),
        item.name(),
        item.owner().filter(owner -> !owner.equals(gone)),
        item.covers(),
        item.sleeps(),
        item.cost(),
        item.goesInto(),
        item.onDays(),
        item.purpose(),
        item.form());
  }

  private Optional<Rule> rule(Rule rule) {
    return rule.match(new Named());
  }

  private Plan plan(Plan plan) {
    return new Plan(
        plan.route(),
        plan.food(),
        plan.fuel(),
        plan.water(),
        plan.goals()
            .map(
                goals ->
                    new Goals(
                        goals.baseMass(),
                        goals.spending(),
                        goals.hikers().stream().filter(h -> !h.hiker().equals(gone)).toList())),
        plan.taking().map(this::taking));
  }

  private Taking taking(Taking taking) {
    String kitOf = gone + "/";
    return new Taking(
        taking.needs(),
        taking.offers().stream()
            .filter(offer -> offer.forHiker().filter(gone::equals).isEmpty())
            .map(offer -> offer(offer, kitOf))
            .toList(),
        taking.budget(),
        taking.keep().stream().filter(name -> !name.startsWith(kitOf)).toList());
  }

  private Offer offer(Offer offer, String kitOf) {
    return new Offer(
        offer.id(),
        offer.name(),
        offer.mass(),
        offer.massFrom(),
        offer.volume(),
        offer.price(),
        offer.available(),
        offer.owner().filter(owner -> !owner.equals(gone)),
        offer.forHiker(),
        offer.stow(),
        offer.covers(),
        offer.requires(),
        offer.makesUnnecessary().stream().filter(name -> !name.startsWith(kitOf)).toList(),
        offer.contains());
  }

  private List<String> others(List<String> hikers) {
    return hikers.stream().filter(h -> !Objects.equals(h, gone)).toList();
  }

  private final class Named implements Rule.Cases<Optional<Rule>> {
    @Override
    public Optional<Rule> pinned(Rule.Pinned rule) {
      return rule.hiker().equals(gone) ? Optional.empty() : Optional.of(rule);
    }

    @Override
    public Optional<Rule> only(Rule.Only rule) {
      List<String> left = others(rule.hikers());
      return left.isEmpty()
          ? Optional.empty()
          : Optional.of(new Rule.Only(rule.id(), rule.pieces(), left));
    }

    @Override
    public Optional<Rule> barred(Rule.Barred rule) {
      List<String> left = others(rule.hikers());
      return left.isEmpty()
          ? Optional.empty()
          : Optional.of(new Rule.Barred(rule.id(), rule.pieces(), left));
    }

    @Override
    public Optional<Rule> together(Rule.Together rule) {
      return Optional.of(rule);
    }

    @Override
    public Optional<Rule> apart(Rule.Apart rule) {
      return Optional.of(rule);
    }

    @Override
    public Optional<Rule> partyHas(Rule.PartyHas rule) {
      List<String> left = rule.parties().stream().filter(parties::contains).toList();
      return !rule.parties().isEmpty() && left.isEmpty()
          ? Optional.empty()
          : Optional.of(new Rule.PartyHas(rule.id(), rule.covers(), left, rule.atLeast()));
    }
  }
}
