package dev.faircarry.solve;

import dev.faircarry.split.Progress;

/**
 * Whoever waits for a search: may end it, and is told how it goes. The search itself knows no
 * clock.
 */
public interface Watch {
  /** Whether to go on. */
  enum Signal {
    GO_ON,
    /** The caller has had enough: keep the best so far. */
    STOP_BY_CALLER,
    /** The safety clock ran out: keep the best so far and say so. */
    STOP_BY_CLOCK
  }

  /** Asked often, from the searching thread. */
  Signal signal();

  /** Told when something got better or a phase began. */
  void progress(Progress progress);

  /** Never stops, listens to nothing. */
  Watch NONE =
      new Watch() {
        @Override
        public Signal signal() {
          return Signal.GO_ON;
        }

        @Override
        public void progress(Progress progress) {}
      };
}
