package dev.faircarry.app;

import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.atomic.LongAdder;

/** How many searches ended how since the program began, and how long they took together. */
public final class SolveCounts {
  /** How a search ended. */
  public enum End {
    /** With a split that is proved the fairest. */
    PROVED,
    /** With a split that may not be the fairest. */
    NOT_PROVED,
    IMPOSSIBLE,
    UNDECIDED,
    /** With an answer that the independent check refused, or not at all. */
    FAILED
  }

  private final Map<End, LongAdder> ends = new EnumMap<>(End.class);
  private final LongAdder nanos = new LongAdder();
  private final LongAdder cutByClock = new LongAdder();

  SolveCounts() {
    for (End end : End.values()) {
      ends.put(end, new LongAdder());
    }
  }

  void count(SplitResult result, long tookNanos) {
    nanos.add(tookNanos);
    if (result instanceof SplitResult.Found found) {
      count(found.proof().proved() ? End.PROVED : End.NOT_PROVED, found.proof().cutByClock());
    } else if (result instanceof SplitResult.Undecided undecided) {
      count(End.UNDECIDED, undecided.cutByClock());
    } else {
      count(End.IMPOSSIBLE, false);
    }
  }

  void failed(long tookNanos) {
    nanos.add(tookNanos);
    count(End.FAILED, false);
  }

  private void count(End end, boolean cut) {
    of(end, 1);
    if (cut) {
      cutByClock.increment();
    }
  }

  private long of(End end, long more) {
    LongAdder counter = ends.get(end);
    if (counter == null) {
      throw new IllegalStateException("every end is counted");
    }
    counter.add(more);
    return counter.sum();
  }

  /** Searches that ended so. */
  public long of(End end) {
    return of(end, 0);
  }

  /** Time spent in all searches that have ended. */
  public long nanos() {
    return nanos.sum();
  }

  /** Searches that the safety clock has cut. */
  public long cutByClock() {
    return cutByClock.sum();
  }
}
