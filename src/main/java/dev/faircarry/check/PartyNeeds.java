package dev.faircarry.check;

import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.Rule;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What parties have of what a rule wants them to have, morning by morning. */
final class PartyNeeds {
  private final Itinerary itinerary;
  private final Goods goods;
  private final Holdings holdings;

  PartyNeeds(Itinerary itinerary, Goods goods, Holdings holdings) {
    this.itinerary = itinerary;
    this.goods = goods;
    this.holdings = holdings;
  }

  /** A finding for each party that has too little on some morning. */
  List<Finding> lacking(Rule.PartyHas rule) {
    List<Finding> lacking = new ArrayList<>();
    Set<String> parties = new LinkedHashSet<>(rule.parties());
    if (parties.isEmpty()) {
      itinerary.hikers.forEach(h -> parties.add(h.party().orElse("")));
    }
    List<Goods.Good> meeting = goods.all.stream().filter(g -> g.covers(rule.covers())).toList();
    for (String party : parties) {
      Set<Integer> days = new TreeSet<>();
      int least = Integer.MAX_VALUE;
      for (int day = 1; day <= itinerary.days; day++) {
        List<Integer> members = members(party, day);
        int has = members.isEmpty() ? rule.atLeast() : has(rule.covers(), meeting, members, day);
        if (has < rule.atLeast()) {
          days.add(day);
          least = Math.min(least, has);
        }
      }
      if (!days.isEmpty()) {
        List<Integer> list = List.copyOf(days);
        String who = party.isEmpty() ? "Those without a party have " : "Party “" + party + "” has ";
        lacking.add(
            new Finding(
                FindingCode.PARTY_LACKS,
                Severity.STOP,
                members(party, list.get(0)).stream()
                    .map(i -> itinerary.hikers.get(i).id())
                    .toList(),
                List.of(),
                List.of(rule.id()),
                list,
                who
                    + least
                    + " of "
                    + rule.atLeast()
                    + " wanted for “"
                    + rule.covers()
                    + "” "
                    + Words.days(list)
                    + ".",
                "Give that party something that covers it (rule " + rule.id() + ")."));
      }
    }
    return lacking;
  }

  private List<Integer> members(String party, int day) {
    List<Integer> members = new ArrayList<>();
    for (int i = 0; i < itinerary.hikers.size(); i++) {
      if (itinerary.hikers.get(i).party().orElse("").equals(party) && itinerary.present(i, day)) {
        members.add(i);
      }
    }
    return members;
  }

  private int has(String need, List<Goods.Good> meeting, List<Integer> members, int day) {
    int has = 0;
    for (int i : members) {
      for (KitItem item : itinerary.hikers.get(i).kit()) {
        has += item.covers().contains(need) ? 1 : 0;
      }
    }
    Set<String> counted = new LinkedHashSet<>();
    for (Goods.Good good : meeting) {
      if (!good.thereOn(day)) {
        continue;
      }
      if (good.partsOfItem() == 0) {
        has += inside(good, members, day);
      } else if (counted.add(good.item().id())) {
        boolean complete =
            goods.ofItem(good.item().id()).stream()
                .allMatch(part -> inside(part, members, day) > 0);
        has += complete ? 1 : 0;
      }
    }
    return has;
  }

  private int inside(Goods.Good good, List<Integer> members, int day) {
    int units = 0;
    for (int i : members) {
      units += holdings.held(good, day, i);
    }
    return units;
  }
}
