package dev.faircarry.check;

import dev.faircarry.split.Split;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import dev.faircarry.unit.MassText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Judges whether a group can leave with a split, ours or hand-made. */
public final class DepartureCheck {
  /** Needs of which the group had better not have all in one pack (common practice). */
  private static final List<String> SAFETY =
      List.of("first-aid", "navigation", "water-treatment", "emergency-shelter", "communication");

  private static final List<String> FUEL = List.of("fuel", "gas");

  private final Trip trip;
  private final Itinerary itinerary;
  private final Goods goods;
  private final Holdings holdings;
  private final List<Finding> findings = new ArrayList<>();

  private DepartureCheck(Trip trip, Split split) {
    this.trip = trip;
    itinerary = new Itinerary(trip);
    goods = new Goods(itinerary);
    holdings = new Holdings(itinerary, goods, split, new FindingList());
  }

  /**
   * Judges.
   *
   * @param trip the trip as it is now, without issues
   * @param madeFor the trip the split was made for, if that is known
   */
  public static Departure of(
      Trip trip, Split split, Optional<Trip> madeFor, Essentials essentials) {
    Completed completed = SplitCheck.completed(trip, split);
    Split whole = completed.split();
    Verdict verdict = SplitCheck.verdict(trip, whole).with(completed.assumptions());
    DepartureCheck check = new DepartureCheck(trip, whole);
    check.findings.addAll(verdict.findings());
    madeFor.ifPresent(then -> Staleness.between(then, trip).ifPresent(check.findings::add));
    check.loads(verdict);
    check.findings.addAll(
        new EssentialFindings(check.itinerary, check.goods, check.holdings, essentials).all());
    check.scarce();
    check.fuelWithFood();
    LabelDoubt labels =
        LabelDoubt.of(check.itinerary, check.goods, check.holdings, verdict.hikers());
    check.labels(labels);
    check.findings.sort(Comparator.comparing(Finding::severity));
    return new Departure(
        readiness(check.findings),
        check.findings,
        verdict,
        labels,
        verdict.keepsRules() ? Optional.of(Fairness.of(trip, whole, verdict)) : Optional.empty());
  }

  private static Departure.Readiness readiness(List<Finding> findings) {
    if (findings.stream().anyMatch(f -> f.severity() == Severity.STOP)) {
      return Departure.Readiness.NOT_READY;
    }
    return findings.stream().anyMatch(f -> f.severity() == Severity.CAUTION)
        ? Departure.Readiness.READY_WITH_CAUTIONS
        : Departure.Readiness.READY;
  }

  private void add(
      FindingCode code,
      Severity severity,
      List<String> hikers,
      List<PieceRef> pieces,
      String message,
      String remedy) {
    findings.add(
        new Finding(code, severity, hikers, pieces, List.of(), List.of(), message, remedy));
  }

  private void loads(Verdict verdict) {
    for (int i = 0; i < itinerary.hikers.size(); i++) {
      Hiker hiker = itinerary.hikers.get(i);
      long most = 0;
      long above = Long.MIN_VALUE;
      for (Morning morning : verdict.hikers().get(i).mornings()) {
        most = Math.max(most, morning.loadMilligrams());
        long target = Math.floorDiv(verdict.hikers().get(i).targetNanograms(), 1_000_000L);
        above = Math.max(above, morning.loadMilligrams() - target);
      }
      long rating =
          hiker.pack().flatMap(p -> p.loadRating()).map(m -> m.milligrams()).orElse(Long.MAX_VALUE);
      if (most > rating) {
        add(
            FindingCode.LOAD_RATING_PASSED,
            Severity.CAUTION,
            List.of(hiker.id()),
            List.of(),
            hiker.name()
                + "’s pack holds up to "
                + Words.grams(most - rating)
                + " more than its maker rates it for.",
            "Give something to somebody else, or take a stronger pack.");
      }
      if (hiker.minor() && above > 0) {
        add(
            FindingCode.MINOR_ABOVE_TARGET,
            Severity.CAUTION,
            List.of(hiker.id()),
            List.of(),
            hiker.name()
                + ", a minor, carries up to "
                + Words.grams(above)
                + " more than the target.",
            "Give something to an adult.");
      }
    }
  }

  /** Two things the group has only once each, or all of one kind, in the same pack. */
  private void scarce() {
    if (itinerary.hikers.size() < 2) {
      return;
    }
    for (int i = 0; i < itinerary.hikers.size(); i++) {
      Set<PieceRef> pieces = new LinkedHashSet<>();
      Set<String> needs = new TreeSet<>();
      for (String need : SAFETY) {
        List<Goods.Good> meeting = goods.all.stream().filter(g -> g.covers(need)).toList();
        int hiker = i;
        boolean allHere =
            !meeting.isEmpty()
                && ownCover(need) == 0
                && meeting.stream()
                    .allMatch(g -> holdings.held(g, 1, hiker) == g.count() && g.count() > 0);
        if (allHere) {
          meeting.forEach(g -> pieces.add(g.ref()));
          needs.add(need);
        }
      }
      if (pieces.size() > 1) {
        add(
            FindingCode.SCARCE_TOGETHER,
            Severity.CAUTION,
            List.of(itinerary.hikers.get(i).id()),
            List.copyOf(pieces),
            "All the group has of "
                + String.join(", ", needs)
                + " is in "
                + itinerary.name(i)
                + "’s pack.",
            "Let somebody else carry one of them, so that one lost pack does not take both.");
      }
    }
  }

  private long ownCover(String need) {
    return trip.hikers().stream()
        .flatMap(h -> h.kit().stream())
        .filter(k -> k.covers().contains(need))
        .count();
  }

  private void fuelWithFood() {
    for (int i = 0; i < itinerary.hikers.size(); i++) {
      List<PieceRef> fuel = new ArrayList<>();
      List<PieceRef> food = new ArrayList<>();
      for (Goods.Good good : goods.all) {
        if (holdings.held(good, 1, i) == 0) {
          continue;
        }
        if (FUEL.stream().anyMatch(good::covers)) {
          fuel.add(good.ref());
        }
        if (good.covers("food") || good.item().goesInto().equals(Optional.of("food"))) {
          food.add(good.ref());
        }
      }
      if (!fuel.isEmpty() && !food.isEmpty()) {
        List<PieceRef> both = new ArrayList<>(fuel);
        both.addAll(food);
        add(
            FindingCode.FUEL_WITH_FOOD,
            Severity.ADVICE,
            List.of(itinerary.hikers.get(i).id()),
            both,
            itinerary.name(i) + " carries fuel and food in one pack.",
            "Local rules come first; else keep fuel upright, closed and away from food.");
      }
    }
  }

  private void labels(LabelDoubt labels) {
    if (labels.unweighedMilligrams() > 0) {
      boolean matters = labels.couldBeThousandths() > labels.worstThousandths();
      add(
          FindingCode.MASSES_FROM_LABELS,
          Severity.ADVICE,
          List.of(),
          List.of(),
          MassText.kilograms(labels.unweighedMilligrams())
              + " of the masses are labels or guesses"
              + (matters
                  ? "; were labels too low by "
                      + LabelDoubt.LABEL_PERCENT
                      + " % and guesses by "
                      + LabelDoubt.ESTIMATE_PERCENT
                      + " %, the worst load would be "
                      + labels.couldBeThousandths()
                      + " instead of "
                      + labels.worstThousandths()
                      + " thousandths of target."
                  : "."),
          "Weigh the packs, heaviest first.");
    }
  }
}
