package dev.faircarry.cli;

/** Something named on the command line cannot be used. */
final class BadInput extends RuntimeException {
  private static final long serialVersionUID = 1L;

  BadInput(String message) {
    super(message);
  }
}
