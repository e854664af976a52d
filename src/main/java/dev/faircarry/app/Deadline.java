package dev.faircarry.app;

import dev.faircarry.solve.Watch;
import dev.faircarry.split.Progress;
import java.util.function.LongSupplier;

/** A safety clock around a watch: time up stops the search, whatever the watch says. */
final class Deadline implements Watch {
  private static final long NANOS_PER_SECOND = 1_000_000_000L;

  private final LongSupplier nanoTime;
  private final long endNanos;
  private final Watch inner;

  Deadline(LongSupplier nanoTime, int seconds, Watch inner) {
    this.nanoTime = nanoTime;
    this.endNanos = nanoTime.getAsLong() + seconds * NANOS_PER_SECOND;
    this.inner = inner;
  }

  @Override
  public Signal signal() {
    Signal signal = inner.signal();
    if (signal != Signal.GO_ON) {
      return signal;
    }
    return nanoTime.getAsLong() - endNanos >= 0 ? Signal.STOP_BY_CLOCK : Signal.GO_ON;
  }

  @Override
  public void progress(Progress progress) {
    inner.progress(progress);
  }
}
