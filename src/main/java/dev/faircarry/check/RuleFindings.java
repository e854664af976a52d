package dev.faircarry.check;

import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;

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
      if (pieces.add(good.ref())) {
        things.add(Words.of(good));
      }
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

  private Breach heldBy(List<PieceRef> pieces, IntPredicate day, IntPredicate wrongHiker) {
    Breach breach = new Breach();
    List<Goods.Good> named = goods.named(pieces);
    for (int d = 1; d <= itinerary.days; d++) {
      if (!day.test(d)) {
        continue;
      }
      for (Goods.Good good : named) {
        for (int i : holdings.holding(good, d)) {
          if (wrongHiker.test(i)) {
            breach.add(i, good, d);
          }
        }
      }
    }
    return breach;
  }

  private Set<Integer> indexes(List<String> hikers) {
    return hikers.stream().map(itinerary::index).collect(Collectors.toSet());
  }

  @Override
  public Boolean pinned(Rule.Pinned rule) {
    int hiker = itinerary.index(rule.hiker());
    return heldBy(rule.pieces(), day -> itinerary.present(hiker, day), i -> i != hiker)
        .report(
            FindingCode.PINNED_ELSEWHERE,
            List.of(rule.id()),
            "carries",
            "Rule " + rule.id() + " gives it to " + itinerary.name(hiker) + ".");
  }

  @Override
  public Boolean only(Rule.Only rule) {
    Set<Integer> allowed = indexes(rule.hikers());
    return heldBy(
            rule.pieces(), day -> itinerary.anyoneOf(rule.hikers(), day), i -> !allowed.contains(i))
        .report(
            FindingCode.NOT_ALLOWED,
            List.of(rule.id()),
            "carries",
            "Rule " + rule.id() + " allows only " + names(rule.hikers()) + ".");
  }

  private String names(List<String> ids) {
    return ids.stream()
        .map(id -> itinerary.name(itinerary.index(id)))
        .collect(Collectors.joining(", "));
  }

  @Override
  public Boolean barred(Rule.Barred rule) {
    Set<Integer> barred = indexes(rule.hikers());
    return heldBy(rule.pieces(), day -> true, barred::contains)
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
      Set<Integer> who = new HashSet<>();
      for (Goods.Good good : named) {
        for (int i : holdings.holding(good, day)) {
          who.add(i);
        }
      }
      for (Goods.Good good : who.size() > 1 ? named : List.<Goods.Good>of()) {
        for (int i : holdings.holding(good, day)) {
          breach.add(i, good, day);
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
    List<List<Goods.Good>> references =
        rule.pieces().stream().map(reference -> goods.named(List.of(reference))).toList();
    for (int day = 1; day <= itinerary.days; day++) {
      int[] referencesHeld = new int[itinerary.hikers.size()];
      for (List<Goods.Good> reference : references) {
        Set<Integer> who = new HashSet<>();
        for (Goods.Good good : reference) {
          for (int i : holdings.holding(good, day)) {
            who.add(i);
          }
        }
        who.forEach(i -> referencesHeld[i]++);
      }
      for (List<Goods.Good> reference : references) {
        for (Goods.Good good : reference) {
          for (int i : holdings.holding(good, day)) {
            if (referencesHeld[i] > 1) {
              breach.add(i, good, day);
            }
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

  private void minors() {
    for (int i = 0; i < itinerary.hikers.size(); i++) {
      Hiker hiker = itinerary.hikers.get(i);
      if (!hiker.minor()) {
        continue;
      }
      Breach breach = new Breach();
      for (Goods.Good good : goods.all) {
        for (int day = 1; day <= itinerary.days; day++) {
          if ((good.covers("flame") || good.covers("fuel"))
              && good.neededFrom(day)
              && holdings.held(good, day, i) > 0) {
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
