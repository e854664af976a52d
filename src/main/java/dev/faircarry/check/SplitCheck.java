package dev.faircarry.check;

import dev.faircarry.split.Opened;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Judges a split by reading it against the trip alone, whoever made it. */
public final class SplitCheck {
  private SplitCheck() {}

  /**
   * Recomputes everything a split claims or implies.
   *
   * @param trip a trip without issues
   * @param split any split, however wrong
   */
  public static Verdict verdict(Trip trip, Split split) {
    Itinerary itinerary = new Itinerary(trip);
    Goods goods = new Goods(itinerary);
    FindingList findings = new FindingList();
    Holdings holdings = new Holdings(itinerary, goods, split, findings);
    new RuleFindings(itinerary, goods, holdings, findings).check();
    new RoomFindings(itinerary, goods, holdings, findings).check();
    LoadSums sums = new LoadSums(itinerary, goods);
    List<HikerLoads> loads = sums.with(holdings);
    List<HikerLoads> own = sums.withoutShared();
    caps(itinerary, loads, own, findings);
    return new Verdict(findings.sorted(), loads, steps(loads), excess(loads), excess(own));
  }

  /**
   * Fills in the opening plan of counted items about which a split made by hand says nothing: each
   * unit comes from the pack that is then the heaviest for its carrier's target. An item with any
   * entry of its own is left as it is, right or wrong.
   *
   * @param trip a trip without issues
   * @param split any split, however wrong
   */
  public static Completed completed(Trip trip, Split split) {
    Itinerary itinerary = new Itinerary(trip);
    Goods goods = new Goods(itinerary);
    Holdings holdings =
        new Holdings(
            itinerary,
            goods,
            split,
            new FindingList(),
            Optional.of(new DefaultOpening(itinerary, goods, split)));
    List<Opened> assumed =
        holdings.opened().subList(split.opened().size(), holdings.opened().size());
    if (assumed.isEmpty()) {
      return new Completed(split, List.of());
    }
    Set<PieceRef> items = new LinkedHashSet<>();
    assumed.forEach(entry -> items.add(PieceRef.item(entry.item())));
    return new Completed(
        new Split(split.carries(), holdings.opened(), split.handoversAtCamp()),
        List.of(
            new Finding(
                FindingCode.OPENING_PLAN_ASSUMED,
                Severity.ADVICE,
                List.of(),
                List.copyOf(items),
                List.of(),
                List.of(),
                "The split does not say whose units are opened when; it is assumed that each comes"
                    + " from the pack that is then the heaviest for its target.",
                "Look at the opening plan of the answer, or state your own.")));
  }

  /** The steps of all hiker-mornings, from highest to lowest. */
  static List<Long> steps(List<HikerLoads> loads) {
    List<Long> steps = new ArrayList<>();
    for (HikerLoads hiker : loads) {
      for (Morning morning : hiker.mornings()) {
        steps.add(morning.steps());
      }
    }
    steps.sort(Collections.reverseOrder());
    return steps;
  }

  private static long excess(List<HikerLoads> loads) {
    long sum = 0;
    for (HikerLoads hiker : loads) {
      for (Morning morning : hiker.mornings()) {
        sum += morning.excessThousandths();
      }
    }
    return sum;
  }

  private static void caps(
      Itinerary itinerary, List<HikerLoads> loads, List<HikerLoads> own, FindingList findings) {
    for (int i = 0; i < loads.size(); i++) {
      List<Integer> days = overCap(loads.get(i));
      List<Integer> ownDays = overCap(own.get(i));
      if (!days.isEmpty()) {
        findings.add(
            over(
                FindingCode.OVER_CAP,
                itinerary,
                i,
                days,
                itinerary.name(i)
                    + " is up to "
                    + Words.grams(most(loads.get(i)))
                    + " over the cap "
                    + Words.days(days)
                    + ".",
                "Give something to somebody else, or leave something at home."));
      }
      if (!ownDays.isEmpty()) {
        findings.add(
            over(
                FindingCode.OWN_KIT_OVER_CAP,
                itinerary,
                i,
                ownDays,
                itinerary.name(i)
                    + "’s own kit alone is up to "
                    + Words.grams(most(own.get(i)))
                    + " over the cap.",
                "Lighten the kit; no split can mend this."));
      }
    }
  }

  private static Finding over(
      FindingCode code,
      Itinerary itinerary,
      int i,
      List<Integer> days,
      String message,
      String remedy) {
    return new Finding(
        code,
        Severity.CAUTION,
        List.of(itinerary.hikers.get(i).id()),
        List.of(),
        List.of(),
        days,
        message,
        remedy);
  }

  private static List<Integer> overCap(HikerLoads loads) {
    return loads.mornings().stream()
        .filter(m -> m.excessThousandths() > 0)
        .map(Morning::day)
        .toList();
  }

  /** Most milligrams over the cap, rounded up. */
  private static long most(HikerLoads loads) {
    long most = 0;
    for (Morning morning : loads.mornings()) {
      if (morning.capNanograms().isPresent()) {
        long cap = Math.floorDiv(morning.capNanograms().getAsLong(), 1_000_000L);
        most = Math.max(most, morning.loadMilligrams() - cap);
      }
    }
    return most;
  }
}
