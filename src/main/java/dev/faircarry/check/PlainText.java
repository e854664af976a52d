package dev.faircarry.check;

import java.util.Optional;

/** What a text for people must be like: not empty, not too long, printable in any script. */
public final class PlainText {
  private PlainText() {}

  /**
   * What is wrong with a text, if anything: it is empty, too long, or holds what cannot be printed.
   *
   * @param most characters it may have
   */
  public static Optional<IssueCode> fault(String text, int most) {
    if (text.isBlank()) {
      return Optional.of(IssueCode.EMPTY_TEXT);
    }
    if (text.codePointCount(0, text.length()) > most) {
      return Optional.of(IssueCode.TEXT_TOO_LONG);
    }
    return text.codePoints().anyMatch(PlainText::unprintable)
        ? Optional.of(IssueCode.BAD_TEXT)
        : Optional.empty();
  }

  private static boolean unprintable(int c) {
    int type = Character.getType(c);
    return type == Character.CONTROL
        || type == Character.SURROGATE
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR;
  }
}
