package dev.faircarry;

import dev.faircarry.cli.Begun;
import dev.faircarry.http.Server;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** The service from its start until the process is told to end, or the thread is interrupted. */
final class Serving {
  private Serving() {}

  /**
   * Serves, and closes what keeps trips in the end, also when the server cannot start.
   *
   * @param begun told once requests are answered
   */
  static void untilStopped(Kept kept, Supplier<Server> starting, Consumer<Begun> begun) {
    Server server;
    try {
      server = starting.get();
    } catch (RuntimeException e) {
      kept.close();
      throw e;
    }
    CountDownLatch stopped = new CountDownLatch(1);
    Thread stop =
        new Thread(
            () -> {
              server.close();
              kept.close();
              stopped.countDown();
            },
            "stop");
    Runtime.getRuntime().addShutdownHook(stop);
    begun.accept(new Begun(server.port(), kept.links()));
    try {
      stopped.await();
    } catch (InterruptedException e) {
      if (Runtime.getRuntime().removeShutdownHook(stop)) {
        stop.run();
      }
      Thread.currentThread().interrupt();
    }
  }
}
