package dev.faircarry.check;

import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Holds every rule of the trip against who holds what, morning by morning. */
final class RuleFindings implements Rule.Cases<Boolean> {
  private final Itinerary itinerary;
  private final Goods goods;
  private final Holdings holdings;
  private final FindingList findings;

  RuleFindings(Itinerary itinerary, Goods goods, Holdings holdings, FindingList findings) {
    this.itinerary = itinerary;
    this.goods = goods;
    this.holdings = holdings;
    this.findings = findings;
  }

  void check() {
    itinerary.trip.rules().forEach(rule -> rule.match(this));
    if (!itinerary.trip.policy().minorsMayCarryFlameAndFuel()) {
      minors();
    }
  }

  /** Whether a hiker holds units of a good that still matter on a morning. */
  private boolean holds(Goods.Good good, int day, int hiker) {
    return holdings.held(good, day, hiker) > 0 && good.neededFrom(day);
  }

  /** Collects who breaks a rule with what on which mornings. */
  private final class Breach {
    private final Set<String> hikers = new LinkedHashSet<>();
    private final Set<PieceRef> pieces = new LinkedHashSet<>();
    private final Set<Integer> days = new TreeSet<>();
    private final Set<String> names = new LinkedHashSet<>();
    private final Set<String> things = new LinkedHashSet<>();

    void add(int hiker, Goods.Good good, int day) {
      hikers.add(itinerary.hikers.get(hiker).id());
      names.add(itinerary.name(hiker));
      pieces.add(good.ref());
      things.add(Words.of(good));
      days.add(day);
    }

    boolean report(FindingCode code, List<String> rules, String verb, String remedy) {
      if (days.isEmpty()) {
        return false;
      }
      List<Integer> list = List.copyOf(days);
      String message =
          String.join(", ", names)
              + " "
              + verb
              + " "
              + String.join(", ", things)
              + " "
              + Words.days(list)
              + ".";
      findings.add(
          new Finding(
              code,
              Severity.STOP,
              List.copyOf(hikers),
              List.copyOf(pieces),
              rules,
              list,
              message,
              remedy));
      return true;
    }
  }

  private Breach heldBy(
      List<PieceRef> pieces, java.util.function.BiPredicate<Integer, Integer> wrong) {
    Breach breach = new Breach();
    for (Goods.Good good : goods.named(pieces)) {
      for (int day = 1; day <= itinerary.days; day++) {
        for (int i = 0; i < itinerary.hikers.size(); i++) {
          if (holds(good, day, i) && wrong.test(i, day)) {
            breach.add(i, good, day);
          }
        }
      }
    }
    return breach;
  }

  @Override
  public Boolean pinned(Rule.Pinned rule) {
    int hiker = itinerary.index(rule.hiker());
    return heldBy(rule.pieces(), (i, day) -> i != hiker && itinerary.present(hiker, day))
        .report(
            FindingCode.PINNED_ELSEWHERE,
            List.of(rule.id()),
            "carries",
            "Rule " + rule.id() + " gives it to " + itinerary.name(hiker) + ".");
  }

  @Override
  public Boolean only(Rule.Only rule) {
    return heldBy(
            rule.pieces(),
            (i, day) ->
                !rule.hikers().contains(itinerary.hikers.get(i).id())
                    && itinerary.anyoneOf(rule.hikers(), day))
        .report(
            FindingCode.NOT_ALLOWED,
            List.of(rule.id()),
            "carries",
            "Rule " + rule.id() + " allows only " + String.join(", ", rule.hikers()) + ".");
  }

  @Override
  public Boolean barred(Rule.Barred rule) {
    return heldBy(rule.pieces(), (i, day) -> rule.hikers().contains(itinerary.hikers.get(i).id()))
        .report(
            FindingCode.BARRED,
            List.of(rule.id()),
            "carries",
            "Rule " + rule.id() + " bars that; give it to somebody else.");
  }

  @Override
  public Boolean together(Rule.Together rule) {
    Breach breach = new Breach();
    List<Goods.Good> named = goods.named(rule.pieces());
    for (int day = 1; day <= itinerary.days; day++) {
      List<Integer> who = new ArrayList<>();
      for (int i = 0; i < itinerary.hikers.size(); i++) {
        int hiker = i;
        int today = day;
        if (named.stream().anyMatch(good -> holds(good, today, hiker))) {
          who.add(i);
        }
      }
      if (who.size() > 1) {
        for (int i : who) {
          for (Goods.Good good : named) {
            if (holds(good, day, i)) {
              breach.add(i, good, day);
            }
          }
        }
      }
    }
    return breach.report(
        FindingCode.NOT_TOGETHER,
        List.of(rule.id()),
        "share",
        "Rule " + rule.id() + " wants all of it in one pack.");
  }

  @Override
  public Boolean apart(Rule.Apart rule) {
    Breach breach = new Breach();
    for (int day = 1; day <= itinerary.days; day++) {
      for (int i = 0; i < itinerary.hikers.size(); i++) {
        List<Goods.Good> mixed = new ArrayList<>();
        int references = 0;
        for (PieceRef reference : rule.pieces()) {
          int before = mixed.size();
          for (Goods.Good good : goods.named(List.of(reference))) {
            if (holds(good, day, i)) {
              mixed.add(good);
            }
          }
          references += mixed.size() > before ? 1 : 0;
        }
        if (references > 1) {
          for (Goods.Good good : mixed) {
            breach.add(i, good, day);
          }
        }
      }
    }
    return breach.report(
        FindingCode.NOT_APART,
        List.of(rule.id()),
        "carries together",
        "Rule " + rule.id() + " wants them in different packs.");
  }

  @Override
  public Boolean partyHas(Rule.PartyHas rule) {
    Set<String> parties = new LinkedHashSet<>(rule.parties());
    if (parties.isEmpty()) {
      itinerary.hikers.forEach(h -> parties.add(h.party().orElse("")));
    }
    for (String party : parties) {
      Set<Integer> days = new TreeSet<>();
      int least = Integer.MAX_VALUE;
      for (int day = 1; day <= itinerary.days; day++) {
        List<Integer> members = members(party, day);
        int has = members.isEmpty() ? rule.atLeast() : has(rule.covers(), members, day);
        if (has < rule.atLeast()) {
          days.add(day);
          least = Math.min(least, has);
        }
      }
      if (!days.isEmpty()) {
        List<Integer> list = List.copyOf(days);
        String who = party.isEmpty() ? "Those without a party have " : "Party “" + party + "” has ";
        findings.add(
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
    return true;
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

  private int has(String need, List<Integer> members, int day) {
    int has = 0;
    for (int i : members) {
      for (KitItem item : itinerary.hikers.get(i).kit()) {
        has += item.covers().contains(need) ? 1 : 0;
      }
    }
    Set<String> counted = new LinkedHashSet<>();
    for (Goods.Good good : goods.all) {
      if (!good.covers(need) || !good.thereOn(day)) {
        continue;
      }
      if (good.partsOfItem() == 0) {
        has += inside(good, members, day);
      } else if (counted.add(good.item().id())) {
        boolean complete =
            goods.named(List.of(PieceRef.item(good.item().id()))).stream()
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

  private void minors() {
    for (int i = 0; i < itinerary.hikers.size(); i++) {
      Hiker hiker = itinerary.hikers.get(i);
      if (!hiker.minor()) {
        continue;
      }
      Breach breach = new Breach();
      for (Goods.Good good : goods.all) {
        for (int day = 1; day <= itinerary.days; day++) {
          if ((good.covers("flame") || good.covers("fuel")) && holds(good, day, i)) {
            breach.add(i, good, day);
          }
        }
      }
      breach.report(
          FindingCode.MINOR_CARRIES_FLAME_OR_FUEL,
          List.of(),
          "is a minor and carries",
          "Give flame and fuel to an adult, or let the policy say that minors may carry them.");
    }
  }
}
