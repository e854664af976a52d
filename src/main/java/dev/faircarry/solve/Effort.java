package dev.faircarry.solve;

/**
 * Counts search steps and knows when to end. One step is roughly the work of trying one move; every
 * part of the search pays here, so that an answer depends on the steps allowed and on nothing else.
 * The watch is asked now and then; what it ends is marked.
 */
final class Effort {
  private static final long ASK_EVERY = 1 << 13;

  private final long allowed;
  private final Watch watch;
  private long spent;
  private long nextAsk;
  private Watch.Signal signal = Watch.Signal.GO_ON;

  Effort(long allowed, Watch watch) {
    this.allowed = allowed;
    this.watch = watch;
  }

  /** Pays for work; true when there is nothing left to spend. */
  boolean spend(long steps) {
    spent += steps;
    if (spent >= nextAsk) {
      nextAsk = spent + ASK_EVERY;
      if (signal == Watch.Signal.GO_ON) {
        signal = watch.signal();
      }
    }
    return over();
  }

  boolean over() {
    return spent >= allowed || signal != Watch.Signal.GO_ON;
  }

  /**
   * A part of what is left, one in so many, to be spent elsewhere; what it spent is paid here
   * afterwards.
   */
  Effort part(int oneIn) {
    return ofSteps(left() / oneIn);
  }

  /** So many steps, to be spent elsewhere and paid here afterwards. */
  Effort ofSteps(long steps) {
    return new Effort(Math.min(steps, left()), watch);
  }

  long spent() {
    return Math.min(spent, allowed);
  }

  long left() {
    return Math.max(0, allowed - spent);
  }

  boolean cutByClock() {
    return signal == Watch.Signal.STOP_BY_CLOCK;
  }

  boolean stopped() {
    return signal != Watch.Signal.GO_ON;
  }

  Watch watch() {
    return watch;
  }
}
