package dev.faircarry.app;

import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;

/** Runs searches on a bounded number of threads behind a bounded queue. */
public final class SolvePool implements AutoCloseable {
  private final ThreadPoolExecutor threads;

  /**
   * @param atOnce how many searches run at the same time
   * @param waiting how many more may wait
   */
  public SolvePool(int atOnce, int waiting) {
    AtomicInteger number = new AtomicInteger();
    threads =
        new ThreadPoolExecutor(
            atOnce,
            atOnce,
            0,
            TimeUnit.SECONDS,
            new ArrayBlockingQueue<>(waiting),
            work -> {
              Thread thread = new Thread(work, "solve-" + number.incrementAndGet());
              thread.setDaemon(true);
              return thread;
            });
  }

  /**
   * Runs one search and waits for its end, which its own effort and clock bound.
   *
   * @throws Busy when the queue is full or the pool is closed
   */
  public <T> T run(Supplier<T> search) {
    Future<T> future;
    try {
      future = threads.submit(search::get);
    } catch (RejectedExecutionException e) {
      throw new Busy();
    }
    try {
      return future.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      if (e.getCause() instanceof Error cause) {
        throw cause;
      }
      throw new IllegalStateException(e.getCause());
    } catch (CancellationException e) {
      throw new Busy();
    } catch (InterruptedException e) {
      future.cancel(true);
      Thread.currentThread().interrupt();
      throw new Busy();
    }
  }

  /** Searches that run now. */
  public int running() {
    return threads.getActiveCount();
  }

  /** Searches that wait for a thread. */
  public int waiting() {
    return threads.getQueue().size();
  }

  /** Takes no more searches; those under way end by themselves or with the program. */
  @Override
  public void close() {
    threads.shutdown();
  }
}
