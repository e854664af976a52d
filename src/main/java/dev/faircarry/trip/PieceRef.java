package dev.faircarry.trip;

import java.util.Optional;

/**
 * Names a shared item, or one part of it. In text: {@code "filter"}, {@code "shelter/fly"}.
 *
 * <p>In a rule an item's bare name stands for all its parts or units; in a split a piece of an item
 * in parts is always named with its part.
 */
public record PieceRef(String item, Optional<String> part) implements Comparable<PieceRef> {

  public static PieceRef item(String item) {
    return new PieceRef(item, Optional.empty());
  }

  public static PieceRef part(String item, String part) {
    return new PieceRef(item, Optional.of(part));
  }

  /** Reads {@code "item"} or {@code "item/part"}; what follows the first slash is the part. */
  public static PieceRef of(String text) {
    int slash = text.indexOf('/');
    return slash < 0 ? item(text) : part(text.substring(0, slash), text.substring(slash + 1));
  }

  /** The reference as it stands in documents. */
  public String text() {
    return part.map(p -> item + "/" + p).orElse(item);
  }

  @Override
  public String toString() {
    return text();
  }

  @Override
  public int compareTo(PieceRef other) {
    return text().compareTo(other.text());
  }
}
