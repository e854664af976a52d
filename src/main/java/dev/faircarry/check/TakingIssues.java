package dev.faircarry.check;

import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.plan.Amount;
import dev.faircarry.trip.plan.Need;
import dev.faircarry.trip.plan.Offer;
import dev.faircarry.trip.plan.PlanLimits;
import dev.faircarry.trip.plan.Taking;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Lists what is wrong with the needs and offers of a plan. */
final class TakingIssues {
  private final PlanRanges ranges;
  private final Set<String> hikers;
  private final Set<String> things = new HashSet<>();
  private final Set<String> kinds = new HashSet<>();
  private final Map<String, Boolean> measured = new HashMap<>();

  TakingIssues(Trip trip, PlanRanges ranges) {
    this.ranges = ranges;
    this.hikers = new HashSet<>(TripIssues.ids(trip.hikers(), Hiker::id));
    things.addAll(TripIssues.ids(trip.shared(), SharedItem::id));
    trip.shared().forEach(item -> item.goesInto().ifPresent(kinds::add));
    for (Hiker hiker : trip.hikers()) {
      for (KitItem item : hiker.kit()) {
        things.add(hiker.id() + "/" + item.id());
      }
    }
  }

  void find(Taking taking, Pointer at) {
    needs(taking.needs(), at.at("needs"));
    measured.putIfAbsent(Need.POT, true);
    kinds.forEach(kind -> measured.putIfAbsent(kind, true));
    Need.COUNTED.forEach(need -> measured.putIfAbsent(need, false));
    offers(taking.offers(), at.at("offers"));
    refs(taking.keep(), at.at("keep"));
  }

  private void needs(List<Need> needs, Pointer at) {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < needs.size(); i++) {
      Need need = needs.get(i);
      Pointer here = at.at(i);
      ranges.ranges().word(here.at("covers"), need.covers());
      if (!seen.add(need.covers())) {
        ranges
            .ranges()
            .issues()
            .add(
                IssueCode.DUPLICATE_NAME,
                here.at("covers"),
                need.covers(),
                "The need is stated twice.");
      }
      amount(here.at("atLeast"), need.covers(), need.atLeast(), 0);
      ranges.number(here.at("perParty"), need.perParty(), 0, PlanLimits.NEED_COUNT);
    }
  }

  private void amount(Pointer at, String need, Amount amount, int least) {
    if (amount instanceof Amount.Count count) {
      ranges.ranges().number(at, count.count(), least, PlanLimits.NEED_COUNT);
    } else {
      ranges.volume(
          at, Optional.of(((Amount.Room) amount).volume()), least, Limits.VOLUME_MILLILITERS);
    }
    Boolean before = measured.putIfAbsent(need, amount.isRoom());
    if (before != null && before != amount.isRoom()) {
      ranges
          .ranges()
          .issues()
          .add(
              IssueCode.NEED_UNITS_DIFFER,
              at,
              "",
              "\""
                  + Issues.shortened(need)
                  + "\" is counted in one place and measured as a volume in another.");
    }
  }

  private void offers(List<Offer> offers, Pointer at) {
    ranges.ranges().uniqueIds(at, TripIssues.ids(offers, Offer::id), "offer");
    long price = 0;
    for (int i = 0; i < offers.size(); i++) {
      offer(offers.get(i), at.at(i));
      long each = offers.get(i).price().map(p -> p.hundredths()).orElse(0L);
      price += each * Math.max(0, Math.min(PlanLimits.AVAILABLE, offers.get(i).available()));
    }
    if (price > PlanLimits.OFFERS_PRICE_HUNDREDTHS) {
      ranges.outside(at, "", "sum of all prices", "0 to 200000.00");
    }
  }

  private void offer(Offer offer, Pointer at) {
    ranges.ranges().id(at.at("id"), offer.id());
    if (things.contains(offer.id())) {
      ranges
          .ranges()
          .issues()
          .add(
              IssueCode.DUPLICATE_ID,
              at.at("id"),
              offer.id(),
              "The id of this offer is also that of a shared item.");
    }
    ranges.ranges().name(at.at("name"), offer.name());
    ranges.ranges().itemMass(at.at("mass"), offer.mass());
    ranges.ranges().volume(at.at("volume"), offer.volume());
    ranges.ranges().number(at.at("available"), offer.available(), 1, PlanLimits.AVAILABLE);
    offer.owner().ifPresent(id -> hiker(at.at("owner"), id));
    offer.forHiker().ifPresent(id -> hiker(at.at("forHiker"), id));
    if (offer.owner().isPresent() && offer.forHiker().isPresent()) {
      ranges
          .ranges()
          .issues()
          .add(
              IssueCode.CONFLICTING_FIELDS,
              at,
              "owner, forHiker",
              "The offer is shared gear with an owner and one hiker's own at once.");
    }
    covers(at.at("covers"), offer.covers());
    covers(at.at("requires"), offer.requires());
    refs(offer.makesUnnecessary(), at.at("makesUnnecessary"));
    ranges.ranges().contains(at.at("contains"), offer.contains());
  }

  private void covers(Pointer at, List<Offer.Cover> covers) {
    for (int i = 0; i < covers.size(); i++) {
      Offer.Cover cover = covers.get(i);
      ranges.ranges().word(at.at(i).at("need"), cover.need());
      amount(at.at(i).at("amount"), cover.need(), cover.amount(), 1);
    }
    ranges.ranges().uniqueNames(at, covers.stream().map(Offer.Cover::need).toList());
  }

  private void hiker(Pointer at, String id) {
    if (!hikers.contains(id)) {
      PlanIssues.unknownHiker(ranges, at, id);
    }
  }

  private void refs(List<String> refs, Pointer at) {
    for (int i = 0; i < refs.size(); i++) {
      if (!things.contains(refs.get(i))) {
        ranges
            .ranges()
            .issues()
            .add(
                IssueCode.UNKNOWN_THING,
                at.at(i),
                refs.get(i),
                "The trip has nothing named \"" + Issues.shortened(refs.get(i)) + "\".");
      }
    }
    ranges.ranges().uniqueNames(at, refs);
  }
}
