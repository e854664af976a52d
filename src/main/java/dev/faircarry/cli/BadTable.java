package dev.faircarry.cli;

import dev.faircarry.check.Issue;
import java.util.List;

/** A table named on the command line has issues. */
final class BadTable extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Issue> issues;
  private final boolean more;

  BadTable(List<Issue> issues, boolean more) {
    super("table");
    this.issues = List.copyOf(issues);
    this.more = more;
  }

  List<Issue> issues() {
    return issues;
  }

  boolean more() {
    return more;
  }
}
