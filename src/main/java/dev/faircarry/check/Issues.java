package dev.faircarry.check;

import dev.faircarry.trip.Limits;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Gathers what is wrong with a document while it is read. Keeps a bounded number. */
public final class Issues {
  /** More than are reported, so that the first in the document's order can be chosen. */
  private static final int KEPT = 10 * Limits.ISSUES;

  private static final int VALUE_LENGTH = 60;

  private final List<Issue> kept = new ArrayList<>();
  private final Set<String> pointers = new LinkedHashSet<>();
  private long untold;

  /** Notes an issue with its code's own remedy. */
  public void add(IssueCode code, Pointer at, String value, String message) {
    add(code, at, value, message, code.remedy());
  }

  /**
   * Notes an issue.
   *
   * @param value as it stands in the document, shortened here; empty where it is private or absent
   */
  public void add(IssueCode code, Pointer at, String value, String message, String remedy) {
    if (kept.size() >= KEPT) {
      untold++;
      return;
    }
    kept.add(new Issue(code, whole(at.text()), shortened(value), whole(message), whole(remedy)));
    pointers.add(at.text());
  }

  /** What was noted, in the order of noting. */
  public List<Issue> list() {
    return List.copyOf(kept);
  }

  /** How many more were noted than are kept. */
  public long untold() {
    return untold;
  }

  /** Whether something is noted of just this place. */
  public boolean has(Pointer at) {
    return pointers.contains(at.text());
  }

  /** The places of everything noted. */
  public Set<String> pointers() {
    return Set.copyOf(pointers);
  }

  /** A value in at most {@value #VALUE_LENGTH} characters and an ellipsis. */
  public static String shortened(String value) {
    if (value.length() <= VALUE_LENGTH) {
      return whole(value);
    }
    return whole(value.substring(0, VALUE_LENGTH)) + "…";
  }

  /** Half characters (lone surrogates) cannot be written as UTF-8; each becomes the stand-in. */
  private static String whole(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints()
        .map(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE ? 0xFFFD : c)
        .forEach(out::appendCodePoint);
    return out.toString();
  }
}
