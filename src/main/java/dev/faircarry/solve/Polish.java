package dev.faircarry.solve;

import java.util.Arrays;

/**
 * Makes a split fairer by dividing anew, exactly, what a few hikers hold together; for trips where
 * nobody leaves early.
 *
 * <p>Slack that is spread over many hikers helps nobody, so groups without enough of it are divided
 * so that one hiker keeps it all; such hikers then meet in the next group.
 */
final class Polish {
  private static final int MOST_HIKERS = 6;
  private static final int FEWEST_BLOCKS = 14;
  private static final int BUNDLES = 2000;
  private static final long STEPS_PER_GROUP = 20_000;

  /** By how many steps mornings of other days may rise, attempt after attempt. */
  private static final int[] MARGINS = {1, 2, 4, 8, 3, 16, 40, 1000};

  private final State state;
  private final Model m;
  private final Dice dice;
  private final Effort effort;
  private final int[] everybody;

  Polish(State state, Dice dice, Effort effort) {
    this.state = state;
    this.m = state.m;
    this.dice = dice;
    this.effort = effort;
    everybody = new int[m.hikers];
    Arrays.setAll(everybody, i -> i);
  }

  /**
   * Tries to lower the last of the mornings at a step, letting mornings below it rise to less than
   * it.
   *
   * @return whether the state's list got fairer
   */
  boolean lower(int step, int tries, long stepLimit) {
    int[][] before = state.routes();
    if (tryLower(step, tries, stepLimit)) {
      return true;
    }
    state.restore(before);
    return false;
  }

  private boolean tryLower(int step, int tries, long stepLimit) {
    long until = effort.spent() + stepLimit;
    int fruitless = 0;
    while (effort.spent() < until && !effort.over() && fruitless < tries) {
      int[] group = group(step, fruitless);
      if (group.length < 2) {
        return false;
      }
      effort.spend(8);
      if (improve(group, step, fruitless)) {
        return true;
      }
      gather(step, fruitless);
      fruitless++;
    }
    return false;
  }

  private boolean improve(int[] group, int step, int round) {
    GroupSearch search = new GroupSearch(state, group, BUNDLES, effort);
    if (!search.listable()) {
      return false;
    }
    int day = dayAt(group, step);
    if (day < 0) {
      return false;
    }
    int[][] wanted = new int[m.days][];
    for (int d = 0; d < m.days; d++) {
      wanted[d] = gentle(GroupSearch.list(state, group, d), d == day, step, round);
    }
    Wish wish = Wish.byDay(wanted, GroupSearch.excess(state, group));
    return search.search(wish, STEPS_PER_GROUP) == GroupSearch.Result.FOUND;
  }

  /** A day on which somebody of the group is at a step. */
  private int dayAt(int[] group, int step) {
    for (int i : group) {
      for (int d = 0; d < m.days; d++) {
        if (state.step[i * m.days + d] == step) {
          return d;
        }
      }
    }
    return -1;
  }

  /**
   * What is wanted of a day. On the day at hand one morning at the step is to be lower and lighter
   * ones may rise to less than the step; on other days mornings below the step may rise only a
   * little, so that lighter days keep their balance.
   */
  private int[] gentle(int[] list, boolean atHand, int step, int round) {
    if (atHand) {
      return Steps.fairerAt(list, lastAt(list, step));
    }
    int[] wanted = list.clone();
    for (int k = 0; k < list.length; k++) {
      if (list[k] < step) {
        wanted[k] = Math.min(step - 1, list[k] + MARGINS[round % MARGINS.length]);
      }
    }
    return wanted;
  }

  private static int lastAt(int[] list, int step) {
    for (int k = list.length - 1; k >= 0; k--) {
      if (list[k] == step) {
        return k;
      }
    }
    return -1;
  }

  /** Divides a random group anew so that one of them keeps most of its slack on the day at hand. */
  private void gather(int step, int round) {
    int day = dayAt(everybody, step);
    int[] group = random();
    if (group.length < 2 || day < 0) {
      return;
    }
    long slack = 0;
    for (int i : group) {
      int cell = i * m.days + day;
      int held = Math.max(step - 1, state.step[cell]);
      slack += Math.max(0, m.capacity(i, day, held) - state.shared[cell]);
    }
    GroupSearch search = new GroupSearch(state, group, BUNDLES, effort);
    if (slack <= 0 || !search.listable()) {
      return;
    }
    int[][] wanted = new int[m.days][];
    for (int d = 0; d < m.days; d++) {
      wanted[d] = GroupSearch.list(state, group, d);
      for (int k = 0; k < wanted[d].length; k++) {
        if (d == day) {
          wanted[d][k] = Math.max(wanted[d][k], step - 1);
        } else if (wanted[d][k] < step) {
          wanted[d][k] = Math.min(step - 1, wanted[d][k] + MARGINS[round % 4]);
        }
      }
    }
    int keeper = dice.below(group.length);
    long free = slack * (3 + dice.below(5)) / 8;
    Wish wish = Wish.byDay(wanted, GroupSearch.excess(state, group));
    search.search(wish.keepingFree(keeper, day, free), STEPS_PER_GROUP);
  }

  private int worst(int hiker) {
    int worst = 0;
    for (int d = 0; d < m.days; d++) {
      worst = Math.max(worst, state.step[hiker * m.days + d]);
    }
    return worst;
  }

  /** Milligrams a hiker could still take on every morning without passing a step. */
  private long slack(int hiker, int step) {
    long least = Long.MAX_VALUE;
    for (int d = 0; d < m.days; d++) {
      least = Math.min(least, m.capacity(hiker, d, step) - state.shared[hiker * m.days + d]);
    }
    return least;
  }

  /** One hiker at the step and those who could take most, a few of them by chance. */
  private int[] group(int step, int round) {
    int at = -1;
    int seen = 0;
    for (int i = 0; i < m.hikers; i++) {
      if (movable(i) && worst(i) == step && dice.below(++seen) == 0) {
        at = i;
      }
    }
    if (at < 0) {
      at = anyMorningAt(step);
    }
    if (at < 0) {
      return new int[0];
    }
    int first = at;
    long[] keys = new long[m.hikers];
    for (int i = 0; i < m.hikers; i++) {
      long slack = slack(i, Math.max(step - 1, Math.min(step, worst(i))));
      long blur = round == 0 ? 1 : 1 + dice.below(1 + Math.min(round, 8));
      long other = round % 2 == 0 ? Math.max(0, slack / blur) : dice.below(1 << 20);
      long key = i == first ? Long.MAX_VALUE >> 8 : other;
      keys[i] = (key << 7) | i;
    }
    Arrays.sort(keys);
    int[] order = new int[m.hikers];
    for (int k = 0; k < order.length; k++) {
      order[k] = (int) (keys[order.length - 1 - k] & 127);
    }
    return fill(order, FEWEST_BLOCKS + 2 * (round % 9));
  }

  private int anyMorningAt(int step) {
    for (int cell = 0; cell < state.step.length; cell++) {
      if (state.step[cell] == step && movable(cell / m.days)) {
        return cell / m.days;
      }
    }
    return -1;
  }

  private boolean movable(int hiker) {
    for (int[] route : state.holder) {
      if (route[0] == hiker) {
        return true;
      }
    }
    return false;
  }

  private int[] random() {
    int[] order = new int[m.hikers];
    Arrays.setAll(order, i -> i);
    dice.shuffle(order);
    return fill(order, FEWEST_BLOCKS + dice.below(8));
  }

  /**
   * The first hikers of an order whose blocks can be listed together: doublings of the number of
   * bundles are counted, one for a block alone in its class and fewer for equal ones.
   */
  private int[] fill(int[] order, int mostDoublings) {
    int size = 0;
    int[] inClass = new int[m.blocks.size()];
    int doublings = 0;
    int[] group = new int[MOST_HIKERS];
    for (int i : order) {
      if (size == MOST_HIKERS) {
        break;
      }
      int with = doublings;
      for (Block block : m.blocks) {
        if (state.holder[block.index()][0] == i) {
          with += rank(++inClass[block.symmetryClass()]) - rank(inClass[block.symmetryClass()] - 1);
        }
      }
      if (size < 2 || with <= mostDoublings) {
        group[size++] = i;
        doublings = with;
      } else {
        for (Block block : m.blocks) {
          inClass[block.symmetryClass()] -= state.holder[block.index()][0] == i ? 1 : 0;
        }
      }
    }
    return Arrays.copyOf(group, size);
  }

  /** The logarithm of count + 1 to base 2, rounded up. */
  private static int rank(int count) {
    return Integer.SIZE - Integer.numberOfLeadingZeros(count);
  }
}
