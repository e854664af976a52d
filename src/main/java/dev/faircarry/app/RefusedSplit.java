package dev.faircarry.app;

/**
 * The independent check refused a split or a claim the search made: a fault of the program. What is
 * wrong is in the log, not in the message.
 */
public final class RefusedSplit extends RuntimeException {
  private static final long serialVersionUID = 1L;

  RefusedSplit() {
    super("a split was refused by its check");
  }
}
