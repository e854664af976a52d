package dev.faircarry.solve;

import dev.faircarry.split.Progress;
import java.util.Arrays;

/**
 * Over several days: level by level from the first that is not proved, each first lowered as far as
 * it goes, then held by as few mornings as can be. Both by halving, what masses allow being tried
 * first. Questions go to {@link PriceSearch}, and to others where it has no answer.
 */
final class PriceClimb {
  private static final long STEPS = 800_000;
  private static final int NODES = 60;

  /** Tries of local search for each block after a level was lowered. */
  private static final long TRIES = 100;

  /** Looks for a split within a wish in other ways. */
  interface Others {
    GroupSearch.Result search(int[] list, int last, int[] wanted, int pass);
  }

  private final State state;
  private final Bound bound;
  private final Improvement improvement;
  private final Others others;
  private final Effort effort;
  private final KnownBundles known;
  private int pass;
  private int[] list;
  private int provedLevels;
  private boolean proving;
  private int floor;

  /** Whether everything asked about the level at hand was answered. */
  private boolean closed;

  PriceClimb(State state, Bound bound, Improvement improvement, Others others, Effort effort) {
    this.state = state;
    this.bound = bound;
    this.improvement = improvement;
    this.others = others;
    this.effort = effort;
    known = new KnownBundles(state.m);
    list = state.list();
  }

  /**
   * Climbs down the list; levels below one that stays open are lowered, not proved.
   *
   * @param proved levels proved already
   * @param mayProve whether anything can be proved at all
   * @param turn each turn may take more effort than the one before
   * @param until so many levels are enough
   * @return levels proved now
   */
  int run(int proved, boolean mayProve, int turn, int until) {
    provedLevels = proved;
    proving = mayProve;
    pass = turn;
    list = state.list();
    int level = Math.min(provedLevels, list.length - 1);
    while (level > 0 && list[level - 1] == list[level]) {
      level--;
    }
    while (provedLevels < list.length && level < until && !effort.over()) {
      closed = true;
      int from = lower(level);
      if (from == level) {
        prove(level + 1);
        from = thin(level);
      }
      if (from < level) {
        level = from;
        continue;
      }
      int last = Steps.lastOfTie(list, level);
      prove(last + 1);
      proving &= closed;
      level = last + 1;
    }
    return provedLevels;
  }

  private void prove(int levels) {
    if (proving && closed && levels > provedLevels) {
      provedLevels = levels;
      floor = levels < list.length ? bound.atLevel(list, levels, list[levels]) : 0;
      tell(Progress.Phase.PROVING);
    }
  }

  int provedLevels() {
    return provedLevels;
  }

  /** For the first level not proved: the step below which no split can bring it. */
  int floor() {
    return floor;
  }

  /** Lowers a level; the first level that changed, or this one if none before it did. */
  private int lower(int level) {
    int low = bound.atLevel(list, level, list[level]);
    if (level == provedLevels && proving) {
      low = Math.max(low, floor);
      floor = low;
    }
    boolean open = false;
    boolean first = true;
    while ((low < list[level] || open) && !effort.over()) {
      boolean decisive = low >= list[level] - 1;
      int step = first ? low : decisive ? list[level] - 1 : (low + list[level]) >>> 1;
      first = false;
      int[] wanted = list.clone();
      Arrays.fill(wanted, level, wanted.length, step);
      GroupSearch.Result result = ask(wanted, level, decisive);
      if (result == GroupSearch.Result.FOUND) {
        int changed = found(level);
        if (changed < level) {
          return changed;
        }
      } else {
        // What is impossible for a step is so for all below it.
        open = result == GroupSearch.Result.UNKNOWN;
        low = step + 1;
        if (open && decisive) {
          break;
        }
        floor = !open && level == provedLevels && proving ? low : floor;
      }
    }
    closed &= !open && !effort.over();
    return level;
  }

  /** Takes mornings off a level; the first level that changed, or this one if none before did. */
  private int thin(int level) {
    int value = list[level];
    int last = Steps.lastOfTie(list, level);
    int low = Math.max(level + 1, provedLevels);
    boolean open = false;
    boolean first = true;
    while (low <= last && !effort.over()) {
      int from = first ? last : (low + last) >>> 1;
      first = false;
      int[] wanted = Steps.fairerAt(list, from);
      GroupSearch.Result result =
          bound.excludes(wanted) ? GroupSearch.Result.NONE : ask(wanted, from, from == last);
      if (result == GroupSearch.Result.FOUND) {
        int changed = found(level);
        if (changed < level || list[level] < value) {
          return changed;
        }
        last = Steps.lastOfTie(list, level);
      } else {
        open = result == GroupSearch.Result.UNKNOWN;
        low = from + 1;
      }
    }
    closed &= !open && !effort.over();
    return level;
  }

  /**
   * Looks for a split within a wish.
   *
   * @param last the first level that it wants lower
   * @param decisive whether nothing stands between the wish and the list as it is
   */
  private GroupSearch.Result ask(int[] wanted, int last, boolean decisive) {
    PriceSearch search =
        new PriceSearch(
            state, Wish.overall(state.m.days, wanted, state.totalExcess), known, effort);
    int more = 2 * pass + (decisive ? 1 : 0);
    GroupSearch.Result result = search.search(STEPS << more, NODES << more);
    if (result == GroupSearch.Result.UNKNOWN && decisive && proving && closed) {
      result = others.search(list, last, wanted, pass);
    }
    return result;
  }

  /** Takes over what was found; the first level that changed. */
  private int found(int level) {
    int[] before = list;
    improvement.even(Arrays.copyOf(state.list(), level + 1), TRIES);
    list = state.list();
    tell(Progress.Phase.IMPROVING);
    int changed = Arrays.mismatch(before, list);
    return changed < 0 ? level : Math.min(level, changed);
  }

  private void tell(Progress.Phase phase) {
    effort.watch().progress(new Progress(phase, list[0], floor, provedLevels, effort.spent()));
  }
}
