package dev.faircarry.http;

import dev.faircarry.check.Issue;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Ends a request with a problem. */
final class ProblemException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final ProblemCode code;
  private final String detail;
  private final transient List<Issue> issues;
  private final boolean moreIssues;
  private final transient Map<String, String> headers = new LinkedHashMap<>();

  ProblemException(ProblemCode code, String detail) {
    this(code, detail, List.of(), false);
  }

  /**
   * @param detail a sentence about this case; never body masses, never what is private
   * @param issues what is wrong with a document; empty where the problem is none of a document
   * @param moreIssues whether there are issues beyond those listed
   */
  ProblemException(ProblemCode code, String detail, List<Issue> issues, boolean moreIssues) {
    super(code.text());
    this.code = code;
    this.detail = detail;
    this.issues = List.copyOf(issues);
    this.moreIssues = moreIssues;
  }

  /** Adds a header to the answer. */
  ProblemException with(String header, String value) {
    headers.put(header, value);
    return this;
  }

  ProblemCode code() {
    return code;
  }

  String detail() {
    return detail;
  }

  List<Issue> issues() {
    return issues;
  }

  boolean moreIssues() {
    return moreIssues;
  }

  Map<String, String> headers() {
    return Map.copyOf(headers);
  }
}
