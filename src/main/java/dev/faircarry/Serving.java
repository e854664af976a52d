package dev.faircarry;

import dev.faircarry.cli.Begun;
import dev.faircarry.http.Server;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import java.util.function.Function;

/** The service from its start until the process is told to end. */
final class Serving {
  private Serving() {}

  /**
   * Serves, and closes in the end what has been opened, also when it is told to end, or fails,
   * before it has begun.
   *
   * @param opening opens what keeps trips
   * @param starting starts the server
   * @param begun told once requests are answered
   */
  static void untilStopped(
      Function<Closing, Kept> opening, Function<Kept, Server> starting, Consumer<Begun> begun) {
    Closing closing = new Closing();
    CountDownLatch stopped = new CountDownLatch(1);
    Thread stop =
        new Thread(
            () -> {
              closing.close();
              stopped.countDown();
            },
            "stop");
    Runtime.getRuntime().addShutdownHook(stop);
    try {
      Kept kept = opening.apply(closing);
      Server server = starting.apply(kept);
      closing.add(server::close);
      begun.accept(new Begun(server.port(), kept.links()));
      stopped.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      closing.close();
    }
  }
}
