package dev.faircarry.json;

import dev.faircarry.check.Issue;
import java.util.List;
import java.util.function.Function;

/** What came of reading a document. */
public sealed interface Reading<T> {

  /** The same with what is made of the value. */
  default <R> Reading<R> map(Function<T, R> make) {
    if (this instanceof Read<T> read) {
      return new Read<>(make.apply(read.value()));
    }
    Bad<T> bad = (Bad<T>) this;
    return new Bad<>(bad.issues(), bad.more());
  }

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
