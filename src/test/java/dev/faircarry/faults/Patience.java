package dev.faircarry.faults;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;

/** Waits for what has to come about in its own time. */
final class Patience {
  private static final long END_SECONDS = 120;
  private static final long LOOK_MILLIS = 50;

  private Patience() {}

  /** Looks again and again until it holds; fails when it has not for far too long. */
  static void until(String what, Callable<Boolean> holds) throws Exception {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(END_SECONDS);
    while (!holds.call()) {
      if (System.nanoTime() - end > 0) {
        fail("not within " + END_SECONDS + " s: " + what);
      }
      TimeUnit.MILLISECONDS.sleep(LOOK_MILLIS);
    }
  }
}
