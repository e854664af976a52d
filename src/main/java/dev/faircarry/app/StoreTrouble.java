package dev.faircarry.app;

/**
 * The store could not do its work. What was asked has not been kept, unless the connection broke
 * while the store was about to say that it has.
 */
public final class StoreTrouble extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Why. */
  public enum Kind {
    /** It does not answer, or not in time; trying again later may help. */
    UNAVAILABLE,
    /** Another request came between, such as one that erased what this one was about. */
    CONTENDED,
    /** There is no room left. */
    FULL,
    /** It can be read but not written. */
    READ_ONLY
  }

  private final Kind kind;

  public StoreTrouble(Kind kind, Throwable cause) {
    super("the store is " + kind, cause);
    this.kind = kind;
  }

  public Kind kind() {
    return kind;
  }
}
