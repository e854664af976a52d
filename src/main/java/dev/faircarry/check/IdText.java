package dev.faircarry.check;

import dev.faircarry.trip.Limits;
import java.util.Optional;
import java.util.regex.Pattern;

/** What a text must be like to be an id: short, and fit for an address without any escaping. */
public final class IdText {
  /** The unreserved characters of RFC 3986; a first point would make a path of dots. */
  private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._~-]*");

  private IdText() {}

  /** What is wrong with a text as an id, if anything. */
  public static Optional<IssueCode> fault(String text) {
    if (text.isBlank()) {
      return Optional.of(IssueCode.EMPTY_TEXT);
    }
    if (text.codePointCount(0, text.length()) > Limits.ID_LENGTH) {
      return Optional.of(IssueCode.TEXT_TOO_LONG);
    }
    return ID.matcher(text).matches() ? Optional.empty() : Optional.of(IssueCode.BAD_ID);
  }
}
