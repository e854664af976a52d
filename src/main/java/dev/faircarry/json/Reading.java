package dev.faircarry.json;

import dev.faircarry.check.Issue;
import java.util.List;

/** What came of reading a document. */
public sealed interface Reading<T> {

  /** The document is fine. */
  record Read<T>(T value) implements Reading<T> {}

  /**
   * The document has issues.
   *
   * @param issues in the order of places, at least one, at most {@code Limits.ISSUES}
   * @param more whether there are issues beyond those listed
   */
  record Bad<T>(List<Issue> issues, boolean more) implements Reading<T> {
    public Bad {
      issues = List.copyOf(issues);
    }
  }
}
