package dev.faircarry.csv;

import dev.faircarry.check.Issue;
import java.util.List;

/** What came of reading tables. */
public sealed interface TableReading<T> {

  /** Nothing is wrong. */
  record Read<T>(T value) implements TableReading<T> {}

  /**
   * The tables have issues.
   *
   * @param issues in the order of tables and rows, at most {@code Limits.ISSUES}
   * @param more whether there are others
   */
  record Bad<T>(List<Issue> issues, boolean more) implements TableReading<T> {
    public Bad {
      issues = List.copyOf(issues);
    }
  }

  /** A table states a body mass that its author does not see; nothing else is told. */
  record StatesHidden<T>() implements TableReading<T> {}
}
