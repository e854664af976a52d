package dev.faircarry.app;

/** Too many searches wait already. */
public final class Busy extends RuntimeException {
  private static final long serialVersionUID = 1L;

  Busy() {
    super("the queue of searches is full");
  }
}
