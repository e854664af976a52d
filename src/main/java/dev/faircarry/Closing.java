package dev.faircarry;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * What has been opened and is closed in the end, the last first. It may be closed while things are
 * still being opened: what comes too late is closed at once.
 */
final class Closing implements AutoCloseable {
  private final Deque<Runnable> open = new ArrayDeque<>();
  private boolean closed;

  /** Says how something that has just been opened is closed. */
  void add(Runnable close) {
    synchronized (open) {
      if (!closed) {
        open.push(close);
        return;
      }
    }
    close.run();
  }

  @Override
  public void close() {
    for (Optional<Runnable> next = next(); next.isPresent(); next = next()) {
      next.get().run();
    }
  }

  private Optional<Runnable> next() {
    synchronized (open) {
      closed = true;
      return Optional.ofNullable(open.poll());
    }
  }
}
