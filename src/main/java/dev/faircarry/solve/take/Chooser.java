package dev.faircarry.solve.take;

import dev.faircarry.choose.Answer;
import dev.faircarry.choose.Candidate;
import dev.faircarry.choose.Coverage;
import dev.faircarry.choose.Point;
import dev.faircarry.choose.Question;
import dev.faircarry.choose.Required;
import dev.faircarry.choose.Shortfall;
import dev.faircarry.choose.Swap;
import dev.faircarry.solve.Watch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Finds every choice that no other beats in both mass and money.
 *
 * <p>The lightest choice; among its equals the cheapest; then the lightest for less money than
 * that; and so on until nothing is possible. Each step is one exhausted search, so every point is
 * proved and so is the gap between two.
 */
public final class Chooser {
  /** Most points of a frontier; a longer one is cut and said to be incomplete. */
  public static final int MAX_POINTS = 500;

  /** Most things to choose among. */
  public static final int MAX_CANDIDATES = 1500;

  private static final TakeModel.Within FREE =
      new TakeModel.Within(OptionalLong.empty(), OptionalLong.empty(), List.of(), List.of());

  private final Question question;
  private final Scale scale;
  private final long allowed;
  private long spent;
  private final Watch watch;
  private boolean cut;
  private boolean cutByClock;

  private Chooser(Question question, long effortSteps, Watch watch) {
    this.watch = watch;
    this.question = question;
    this.scale = Scale.of(question);
    this.allowed = effortSteps;
  }

  /**
   * Answers a question within so many search steps.
   *
   * @param watch asked whether to stop; a search it ends leaves what was proved before
   * @throws IllegalArgumentException when all offers together cost more than can be summed
   */
  public static Answer answer(Question question, long effortSteps, Watch watch) {
    return question.candidates().size() > MAX_CANDIDATES
        ? new Answer.TooLarge(question.candidates().size(), MAX_CANDIDATES)
        : new Chooser(question, effortSteps, watch).answer();
  }

  private Answer answer() {
    if (question.candidates().isEmpty()) {
      return nothingToChoose();
    }
    List<Point> frontier = new ArrayList<>();
    OptionalLong priceAtMost = OptionalLong.empty();
    while (frontier.size() < MAX_POINTS) {
      Optional<Point> point = lightest(priceAtMost, List.of());
      if (point.isEmpty()) {
        break;
      }
      frontier.add(point.orElseThrow());
      long price = point.orElseThrow().priceHundredths() / scale.priceUnitHundredths();
      if (price == 0) {
        break;
      }
      priceAtMost = OptionalLong.of(price - 1);
    }
    boolean complete = !cut && frontier.size() < MAX_POINTS;
    if (frontier.isEmpty()) {
      return cut ? new Answer.Undecided(spent, cutByClock) : unmeetable();
    }
    Point start = frontier.get(frontier.size() - 1);
    List<Swap> swaps = complete ? swaps(start) : List.of();
    return new Answer.Choices(
        frontier,
        complete,
        scale.massStepMilligrams(),
        withinBudget(frontier),
        start,
        swaps,
        spent,
        cutByClock);
  }

  private Optional<Point> withinBudget(List<Point> frontier) {
    long budget = question.budgetHundredths().orElse(Long.MAX_VALUE);
    return frontier.stream().filter(p -> p.priceHundredths() <= budget).findFirst();
  }

  /**
   * The lightest choice, of those the cheapest, of those the one that changes least; empty also
   * when cut.
   */
  private Optional<Point> lightest(OptionalLong priceAtMost, List<Integer> offers) {
    Optional<List<Integer>> light =
        smallest(
            TakeModel.Goal.MASS,
            new TakeModel.Within(OptionalLong.empty(), priceAtMost, offers, List.of()));
    Optional<List<Integer>> cheap =
        light.flatMap(
            found ->
                smallest(
                    TakeModel.Goal.PRICE,
                    new TakeModel.Within(
                        OptionalLong.of(mass(found)), priceAtMost, offers, List.of())));
    Optional<List<Integer>> near =
        cheap.flatMap(
            found ->
                smallest(
                    TakeModel.Goal.CHANGES,
                    new TakeModel.Within(
                        OptionalLong.of(mass(found)),
                        OptionalLong.of(price(found)),
                        offers,
                        List.of())));
    return near.map(found -> Point.of(question, found));
  }

  /** The proved smallest choice; empty when there is none or the effort ended first. */
  private Optional<List<Integer>> smallest(TakeModel.Goal goal, TakeModel.Within within) {
    Watch.Signal signal = watch.signal();
    cutByClock |= signal == Watch.Signal.STOP_BY_CLOCK;
    if (cut || spent >= allowed || signal != Watch.Signal.GO_ON) {
      cut = true;
      return Optional.empty();
    }
    if (within.massAtMost().orElse(0) < 0 || within.priceAtMost().orElse(0) < 0) {
      return Optional.empty();
    }
    TakeModel.Found found =
        new TakeModel(question, scale, within).smallest(goal, allowed - spent, watch);
    spent += found.effortSteps();
    if (!found.proved()) {
      cutByClock |= watch.signal() == Watch.Signal.STOP_BY_CLOCK;
      cut = true;
      return Optional.empty();
    }
    return found.counts().isEmpty() ? Optional.empty() : Optional.of(found.counts());
  }

  /** The empty choice stands if nothing is asked for. */
  private Answer nothingToChoose() {
    List<Shortfall> unmet = Coverage.shortfalls(question, List.of());
    if (!unmet.isEmpty()) {
      return new Answer.Unmeetable(List.of(unmet.get(0).need()), unmet, true, 0);
    }
    Point empty = Point.of(question, List.of());
    return new Answer.Choices(
        List.of(empty), true, 1, Optional.of(empty), empty, List.of(), 0, false);
  }

  private long mass(List<Integer> counts) {
    long sum = 0;
    for (int i = 0; i < counts.size(); i++) {
      sum += (long) counts.get(i) * scale.mass(question.candidates().get(i));
    }
    return sum;
  }

  private long price(List<Integer> counts) {
    return question.priceHundredths(counts) / scale.priceUnitHundredths();
  }

  /**
   * For every purchase the start does not make: the lightest choice that buys it and nothing else
   * new.
   */
  private List<Swap> swaps(Point start) {
    List<Swap> swaps = new ArrayList<>();
    for (int i = 0; i < question.candidates().size(); i++) {
      Candidate candidate = question.candidates().get(i);
      if (candidate.kind() != Candidate.Kind.OFFER
          || candidate.priceHundredths() == 0
          || start.counts().get(i) == candidate.most()) {
        continue;
      }
      Optional<Point> with = lightest(OptionalLong.empty(), buyingOnly(start, i));
      with.filter(p -> p.massMilligrams() < start.massMilligrams())
          .ifPresent(
              p ->
                  swaps.add(
                      new Swap(
                          candidate.ref(),
                          start.massMilligrams() - p.massMilligrams(),
                          p.priceHundredths() - start.priceHundredths(),
                          p)));
    }
    swaps.sort(Chooser::mostGramsForTheMoney);
    return swaps;
  }

  private List<Integer> buyingOnly(Point start, int offer) {
    List<Integer> most = new ArrayList<>();
    for (int j = 0; j < question.candidates().size(); j++) {
      Candidate candidate = question.candidates().get(j);
      boolean bought = candidate.priceHundredths() > 0 && j != offer;
      most.add(bought ? start.counts().get(j) : candidate.most());
    }
    return most;
  }

  private static int mostGramsForTheMoney(Swap a, Swap b) {
    long costA = Math.max(0, a.costHundredths());
    long costB = Math.max(0, b.costHundredths());
    int byRatio = Long.compare(b.savedMilligrams() * costA, a.savedMilligrams() * costB);
    return byRatio != 0 ? byRatio : a.offer().compareTo(b.offer());
  }

  /**
   * Leaves out one need after the other as long as it stays impossible: what remains cannot be met
   * together.
   */
  private Answer unmeetable() {
    List<String> asking =
        question.needs().stream().filter(Required::asks).map(Required::need).toList();
    List<String> dropped = new ArrayList<>();
    boolean irreducible = true;
    for (String need : asking) {
      List<String> tried = new ArrayList<>(dropped);
      tried.add(need);
      if (spent >= allowed) {
        irreducible = false;
        break;
      }
      TakeModel.Found found =
          new TakeModel(
                  question,
                  scale,
                  new TakeModel.Within(FREE.massAtMost(), FREE.priceAtMost(), List.of(), tried))
              .any(allowed - spent, watch);
      spent += found.effortSteps();
      irreducible &= found.proved();
      if (found.proved() && found.counts().isEmpty()) {
        dropped = tried;
      }
    }
    List<String> left = new ArrayList<>(asking);
    left.removeAll(dropped);
    return new Answer.Unmeetable(left, shortfallsOfAll(), irreducible, spent);
  }

  /** What is short even with everything taken, as far as that alone says why. */
  private List<Shortfall> shortfallsOfAll() {
    List<Shortfall> found = new ArrayList<>();
    for (Required need : question.needs()) {
      long met = 0;
      for (Candidate candidate : question.candidates()) {
        met += candidate.most() * candidate.covers(need.need());
      }
      if (met < need.atLeast()) {
        found.add(new Shortfall(need.need(), Optional.empty(), need.atLeast(), met));
      }
    }
    return found;
  }
}
