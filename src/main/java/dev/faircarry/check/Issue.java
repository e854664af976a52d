package dev.faircarry.check;

import java.util.Optional;

/**
 * Something wrong with a document or a table: what, where, with which value, and what to do about
 * it.
 *
 * @param pointer JSON pointer (RFC 6901) of the place; empty for the whole document, and for a
 *     table
 * @param value the offending value, shortened; empty where it is private or absent
 * @param message one sentence that names the value or the limit
 * @param remedy one sentence that says what to do
 * @param cell the place, if it is in a table
 */
public record Issue(
    IssueCode code,
    String pointer,
    String value,
    String message,
    String remedy,
    Optional<Cell> cell) {

  /** An issue of a document. */
  public Issue(IssueCode code, String pointer, String value, String message, String remedy) {
    this(code, pointer, value, message, remedy, Optional.empty());
  }

  /** The place as people read it. */
  public String place() {
    return cell.map(Cell::text).orElse(pointer.isEmpty() ? "document" : pointer);
  }
}
