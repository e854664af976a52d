package dev.faircarry.oracle;

/** More than can be tried out. */
public final class TooLarge extends RuntimeException {
  private static final long serialVersionUID = 1;
}
