package dev.faircarry.check;

/**
 * A place in a document, as a JSON pointer (RFC 6901).
 *
 * @param text empty for the whole document, else {@code "/hikers/0/name"}
 */
public record Pointer(String text) {
  /** The whole document. */
  public static final Pointer ROOT = new Pointer("");

  /** The place of a field. */
  public Pointer at(String field) {
    return new Pointer(text + "/" + field.replace("~", "~0").replace("/", "~1"));
  }

  /** The place of an entry of a list, counted from nothing. */
  public Pointer at(int index) {
    return new Pointer(text + "/" + index);
  }

  @Override
  public String toString() {
    return text;
  }
}
