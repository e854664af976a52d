package dev.faircarry.kit;

/**
 * A goal and how far it is.
 *
 * @param goal milligrams of base weight, or hundredths of money
 * @param now the same of what is
 */
public record Goal(long goal, long now) {

  /** How much must still go; nothing or less when the goal is reached. */
  public long distance() {
    return now - goal;
  }
}
