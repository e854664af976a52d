package dev.faircarry.json;

import dev.faircarry.check.Issue;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.trip.Limits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Puts the issues of a document in order and cuts the list where it gets too long. */
final class Report {
  private Report() {}

  static <T> Reading<T> bad(Issues issues) {
    return bad(issues.list(), issues.untold() > 0);
  }

  /** What is wrong with a document, and with parts of it that were read by themselves. */
  static <T> Reading<T> joined(Issues around, List<Reading.Bad<?>> parts) {
    List<Issue> all = new ArrayList<>(around.list());
    parts.forEach(part -> all.addAll(part.issues()));
    return bad(all, around.untold() > 0 || parts.stream().anyMatch(Reading.Bad::more));
  }

  private static <T> Reading<T> bad(List<Issue> all, boolean untold) {
    List<Issue> sorted = new ArrayList<>(all);
    sorted.sort(Comparator.comparing(Issue::pointer, Report::byPlace));
    boolean more = untold || sorted.size() > Limits.ISSUES;
    return new Reading.Bad<>(sorted.subList(0, Math.min(sorted.size(), Limits.ISSUES)), more);
  }

  /**
   * The value, if nothing is wrong.
   *
   * @param found issues of the document around
   * @param at where the part that was read stands in that document
   * @param own issues of that part, places counted from it
   * @param further more of the same
   */
  static <T> Reading<T> of(
      Optional<T> value, Issues found, Pointer at, Issues own, List<Issue> further) {
    List<Issue> all = new ArrayList<>(found.list());
    own.list().forEach(issue -> all.add(below(at, issue)));
    further.forEach(issue -> all.add(below(at, issue)));
    if (all.isEmpty() && value.isPresent()) {
      return new Reading.Read<>(value.get());
    }
    return bad(all, found.untold() + own.untold() > 0);
  }

  /**
   * What is made of several parts, if nothing is wrong with any of them.
   *
   * @param own issues of the document around
   * @param parts readings whose issues already stand at their places in that document
   */
  static <T> Reading<T> together(Issues own, List<Reading<?>> parts, Supplier<T> make) {
    List<Issue> all = new ArrayList<>(own.list());
    boolean untold = own.untold() > 0;
    for (Reading<?> part : parts) {
      if (part instanceof Reading.Bad<?> bad) {
        all.addAll(bad.issues());
        untold |= bad.more();
      }
    }
    return all.isEmpty() ? new Reading.Read<>(make.get()) : bad(all, untold);
  }

  private static Issue below(Pointer at, Issue issue) {
    return new Issue(
        issue.code(),
        at.text() + issue.pointer(),
        issue.value(),
        issue.message(),
        issue.remedy(),
        issue.cell());
  }

  /** By segment, numbers by size, so that entry 10 comes after entry 9. */
  private static int byPlace(String one, String other) {
    String[] left = one.split("/", -1);
    String[] right = other.split("/", -1);
    for (int i = 0; i < Math.min(left.length, right.length); i++) {
      int order = bySegment(left[i], right[i]);
      if (order != 0) {
        return order;
      }
    }
    return Integer.compare(left.length, right.length);
  }

  private static int bySegment(String left, String right) {
    boolean numbers = isIndex(left) && isIndex(right);
    return numbers
        ? Integer.compare(Integer.parseInt(left), Integer.parseInt(right))
        : left.compareTo(right);
  }

  private static boolean isIndex(String segment) {
    return !segment.isEmpty()
        && segment.length() < 9
        && segment.chars().allMatch(c -> c >= '0' && c <= '9');
  }
}
