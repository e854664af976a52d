package dev.faircarry.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorCompletionService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class SolvePoolTest {
  private static final long PATIENCE_SECONDS = 30;

  @Test
  void whatASearchThrowsComesBackAsItIs() {
    RefusedSplit thrown = new RefusedSplit();
    try (SolvePool pool = new SolvePool(1, 1)) {
      RefusedSplit back =
          assertThrows(
              RefusedSplit.class,
              () ->
                  pool.run(
                      () -> {
                        throw thrown;
                      }));
      assertSame(thrown, back);
    }
  }

  @Test
  void whoFindsTheQueueFullIsTurnedAwayAtOnce() throws Exception {
    CountDownLatch running = new CountDownLatch(1);
    CountDownLatch mayEnd = new CountDownLatch(1);
    ExecutorService clients = Executors.newFixedThreadPool(3);
    try (SolvePool pool = new SolvePool(1, 1)) {
      ExecutorCompletionService<String> answers = new ExecutorCompletionService<>(clients);
      Future<String> first = answers.submit(() -> pool.run(() -> held(running, mayEnd)));
      assertTrue(running.await(PATIENCE_SECONDS, TimeUnit.SECONDS));
      answers.submit(() -> pool.run(() -> "waited"));
      answers.submit(() -> pool.run(() -> "waited"));
      // The thread is held and one place is free: one of the two waits, the other is turned away.
      Future<String> turnedAway = answers.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
      assertNotNull(turnedAway);
      assertInstanceOf(
          Busy.class, assertThrows(ExecutionException.class, turnedAway::get).getCause());
      mayEnd.countDown();
      assertEquals("first", first.get(PATIENCE_SECONDS, TimeUnit.SECONDS));
      // Which client hears first is up to the threads; that both hear is not.
      List<String> heard = new ArrayList<>();
      heard.add(answers.poll(PATIENCE_SECONDS, TimeUnit.SECONDS).get());
      heard.add(answers.poll(PATIENCE_SECONDS, TimeUnit.SECONDS).get());
      Collections.sort(heard);
      assertEquals(List.of("first", "waited"), heard);
    } finally {
      mayEnd.countDown();
      clients.shutdownNow();
    }
  }

  @Test
  void aClosedPoolTakesNothing() {
    SolvePool pool = new SolvePool(1, 1);
    pool.close();
    assertThrows(Busy.class, () -> pool.run(() -> "late"));
  }

  private static String held(CountDownLatch running, CountDownLatch mayEnd) {
    running.countDown();
    try {
      mayEnd.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return "first";
  }
}
