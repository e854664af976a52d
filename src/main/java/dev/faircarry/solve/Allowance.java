package dev.faircarry.solve;

/** The steps that one search may take out of the effort of all; remembers whether it was cut. */
final class Allowance {
  private final Effort effort;
  private long stepsLeft;
  private boolean cut;

  Allowance(Effort effort, long steps) {
    this.effort = effort;
    stepsLeft = steps;
  }

  /** Pays for work; true when the search has to end. */
  boolean pay(long steps) {
    stepsLeft -= steps;
    boolean over = effort.spend(steps);
    cut = cut || over || stepsLeft < 0;
    return cut;
  }

  /** Whether the search had to end before it was done, and so proves nothing. */
  boolean cut() {
    return cut;
  }
}
