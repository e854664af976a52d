package dev.faircarry.oracle;

import dev.faircarry.split.CampHandover;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Opened;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntPredicate;

/** All ways a thing can go through the trip, rules not yet asked. */
final class Courses {
  private final PlainTrip plain;
  private final Thing thing;
  private final int days;
  private final int hikers;
  private final int most;
  private final List<Course> found = new ArrayList<>();
  private final Deque<Carry> carries = new ArrayDeque<>();
  private final Deque<Opened> opened = new ArrayDeque<>();
  private final Deque<CampHandover> handovers = new ArrayDeque<>();
  private final int[][] unused;
  private final int[][] empties;

  private Courses(PlainTrip plain, Thing thing, int most) {
    this.plain = plain;
    this.thing = thing;
    this.most = most;
    days = plain.trip.days();
    hikers = plain.hikers();
    unused = new int[days + 1][hikers];
    empties = new int[days + 1][hikers];
  }

  /**
   * @throws TooLarge if there are more than {@code most}
   */
  static List<Course> of(PlainTrip plain, Thing thing, int most) {
    Courses courses = new Courses(plain, thing, most);
    courses.depart();
    return courses.found;
  }

  private void depart() {
    share(
        thing.units(),
        new int[hikers],
        i -> true,
        first -> {
          unused[0] = first.clone();
          int added = 0;
          for (int i = 0; i < hikers; i++) {
            if (first[i] > 0) {
              carries.addLast(new Carry(plain.hiker(i).id(), thing.ref(), first[i]));
              added++;
            }
          }
          walk(1);
          drop(carries, added);
        });
  }

  /** From the morning of a day to the end. */
  private void walk(int day) {
    if (day > days) {
      keep();
      return;
    }
    int[] before = unused[day - 1].clone();
    share(
        thing.usedOnDay(day),
        new int[hikers],
        i -> plain.present(i, day) && before[i] > 0,
        used -> {
          int[] left = before.clone();
          int[] waste = empties[day - 1].clone();
          int added = 0;
          for (int i = 0; i < hikers; i++) {
            if (used[i] > before[i]) {
              drop(opened, added);
              return;
            }
            left[i] -= used[i];
            waste[i] += used[i];
            if (used[i] > 0) {
              opened.addLast(new Opened(day, thing.item().id(), plain.hiker(i).id(), used[i]));
              added++;
            }
          }
          empties[day] = waste;
          camp(day, 0, left);
          drop(opened, added);
        });
  }

  /** Leavers from {@code from} on hand what is still needed to those who stay. */
  private void camp(int day, int from, int[] held) {
    if (from == hikers || day == days) {
      unused[day] = held;
      walk(day + 1);
      return;
    }
    if (plain.lastDay(from) != day || held[from] == 0 || !thing.neededFrom(day + 1, days)) {
      camp(day, from + 1, held);
      return;
    }
    share(
        held[from],
        new int[hikers],
        i -> plain.lastDay(i) > day,
        given -> {
          int[] after = held.clone();
          after[from] = 0;
          int added = 0;
          for (int i = 0; i < hikers; i++) {
            after[i] += given[i];
            if (given[i] > 0) {
              handovers.addLast(
                  new CampHandover(
                      day, plain.hiker(from).id(), plain.hiker(i).id(), thing.ref(), given[i]));
              added++;
            }
          }
          camp(day, from + 1, after);
          drop(handovers, added);
        });
  }

  /** Every way to share units among hikers. */
  private void share(int units, int[] shares, IntPredicate among, Consumer<int[]> then) {
    shareFrom(0, units, shares, among, then);
  }

  private void shareFrom(
      int hiker, int units, int[] shares, IntPredicate among, Consumer<int[]> then) {
    if (units == 0) {
      then.accept(shares);
      return;
    }
    if (hiker == hikers) {
      return;
    }
    if (among.test(hiker)) {
      for (int some = units; some > 0; some--) {
        shares[hiker] = some;
        shareFrom(hiker + 1, units - some, shares, among, then);
      }
      shares[hiker] = 0;
    }
    shareFrom(hiker + 1, units, shares, among, then);
  }

  private void keep() {
    if (found.size() >= most) {
      throw new TooLarge();
    }
    int[][] held = new int[days][];
    int[][] waste = new int[days][];
    long[][] masses = new long[days][hikers];
    for (int day = 1; day <= days; day++) {
      held[day - 1] = unused[day - 1].clone();
      waste[day - 1] = empties[day - 1].clone();
      for (int i = 0; i < hikers; i++) {
        if (!plain.present(i, day)) {
          held[day - 1][i] = 0;
          waste[day - 1][i] = 0;
        }
        masses[day - 1][i] =
            (thing.thereOn(day) ? held[day - 1][i] * thing.milligrams(day) : 0)
                + waste[day - 1][i] * thing.leavesMilligrams();
      }
    }
    found.add(
        new Course(
            List.copyOf(carries),
            List.copyOf(opened),
            List.copyOf(handovers),
            held,
            waste,
            masses));
  }

  private static void drop(Deque<?> from, int count) {
    for (int n = 0; n < count; n++) {
      from.removeLast();
    }
  }
}
