package dev.faircarry.check;

import java.util.Locale;

/** What can be wrong with a document. */
public enum IssueCode {
  NOT_JSON,
  WRONG_TYPE,
  MISSING,
  UNKNOWN_FIELD,
  DUPLICATE_ID,
  UNKNOWN_NAME;

  /** The code as it stands in documents: {@code unknown-field}. */
  public String text() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
