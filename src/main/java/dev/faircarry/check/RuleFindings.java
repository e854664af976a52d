package dev.faircarry.check;

import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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

  private Breach heldBy(List<PieceRef> pieces, IntPredicate day, IntPredicate wrongHiker) {
    Breach breach = new Breach(itinerary);
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
            findings,
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
            findings,
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
            findings,
            FindingCode.BARRED,
            List.of(rule.id()),
            "carries",
            "Rule " + rule.id() + " bars that; give it to somebody else.");
  }

  @Override
  public Boolean together(Rule.Together rule) {
    Breach breach = new Breach(itinerary);
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
        findings,
        FindingCode.NOT_TOGETHER,
        List.of(rule.id()),
        "share",
        "Rule " + rule.id() + " wants all of it in one pack.");
  }

  @Override
  public Boolean apart(Rule.Apart rule) {
    Breach breach = new Breach(itinerary);
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
        findings,
        FindingCode.NOT_APART,
        List.of(rule.id()),
        "carries together",
        "Rule " + rule.id() + " wants them in different packs.");
  }

  @Override
  public Boolean partyHas(Rule.PartyHas rule) {
    new PartyNeeds(itinerary, goods, holdings).lacking(rule).forEach(findings::add);
    return true;
  }

  private void minors() {
    for (int i = 0; i < itinerary.hikers.size(); i++) {
      Hiker hiker = itinerary.hikers.get(i);
      if (!hiker.minor()) {
        continue;
      }
      Breach breach = new Breach(itinerary);
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
          findings,
          FindingCode.MINOR_CARRIES_FLAME_OR_FUEL,
          List.of(),
          "is a minor and carries",
          "Give flame and fuel to an adult, or let the policy say that minors may carry them.");
    }
  }
}
