package dev.faircarry.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.access.Token;
import dev.faircarry.app.Job;
import dev.faircarry.app.JobStore.Renewal;
import dev.faircarry.app.Store;
import dev.faircarry.app.StoredSplit;
import dev.faircarry.app.TripState;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Demand;
import dev.faircarry.split.Outcome;
import dev.faircarry.split.Progress;
import dev.faircarry.split.Proof;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the queue of every store must do. */
abstract class JobContract {
  private static final Instant NOON = StoreContract.NOON;
  private static final Duration LEASE = Duration.ofSeconds(10);
  private static final int MOST = 3;
  private static final Outcome.Solved SOLVED =
      new Outcome.Solved(
          new Split(List.of(new Carry("asha", PieceRef.of("stove"), 1)), List.of(), List.of()),
          new Proof(4, 2, 1, OptionalLong.of(88), true, 1000, false));
  Store store;
  private String trip = "";

  abstract Store open() throws Exception;

  @BeforeEach
  void begin() throws Exception {
    store = open();
    trip = Token.freshId(new SecureRandom());
    store.trips().create(trip, TripState.of(Trips.named("One")), StoreContract.LEADER, NOON, "k");
  }

  @AfterEach
  void end() {
    store.close();
  }

  private Job waiting(String id, int second) {
    return new Job(
        id,
        trip,
        1,
        5_000,
        StoreContract.LEADER,
        NOON.plusSeconds(second),
        Job.State.WAITING,
        0,
        false,
        Optional.empty(),
        Optional.empty());
  }

  private Optional<Job> take(Instant now) {
    return store.jobs().take("one", now, LEASE, MOST);
  }

  @Test
  void queueHasASizeAndKeepsItsOrder() {
    assertTrue(store.jobs().enqueue(waiting("b", 2), 2));
    assertTrue(store.jobs().enqueue(waiting("a", 1), 2));
    assertFalse(store.jobs().enqueue(waiting("c", 3), 2));
    assertEquals(2, store.jobs().open());
    assertEquals("a", take(NOON).orElseThrow().id());
    assertEquals("b", take(NOON).orElseThrow().id());
    assertEquals(Optional.empty(), take(NOON));
  }

  @Test
  void outcomeAndItsSplitAreKeptTogether() {
    store.jobs().enqueue(waiting("a", 1), 9);
    Job taken = take(NOON).orElseThrow();
    assertEquals(1, taken.attempt());
    assertTrue(store.jobs().finish("a", 1, NOON, SOLVED));
    Job done = store.jobs().find(trip, "a").orElseThrow();
    assertEquals(Job.State.DONE, done.state());
    assertEquals(Optional.of(SOLVED), done.outcome());
    StoredSplit split = store.trips().split(trip, "a").orElseThrow();
    assertEquals(SOLVED.split(), split.split());
    assertEquals(Optional.of(SOLVED.proof()), split.proof());
    assertEquals(1, split.revision());
    assertEquals(0, store.jobs().open());
  }

  @Test
  void everyKindOfOutcomeComesBack() {
    List<Demand> conflict =
        List.of(
            new Demand.OfRule("r1"),
            new Demand.OfMinor("m"),
            new Demand.OfRoom("asha"),
            new Demand.OfMaxPieces("tomas"),
            new Demand.OfContainers("food"));
    List<Outcome> outcomes =
        List.of(
            new Outcome.Impossible(conflict, true, 7),
            new Outcome.Undecided(9, true),
            new Outcome.Solved(
                SOLVED.split(), new Proof(2, 2, 0, OptionalLong.empty(), true, 5, false)));
    for (int i = 0; i < outcomes.size(); i++) {
      String id = "job" + i;
      store.jobs().enqueue(waiting(id, i), 9);
      Job taken = take(NOON).orElseThrow();
      store.jobs().finish(taken.id(), taken.attempt(), NOON, outcomes.get(i));
      assertEquals(
          Optional.of(outcomes.get(i)), store.jobs().find(trip, id).orElseThrow().outcome());
    }
  }

  @Test
  void leaseThatRanOutLetsAnotherTakeOverAndFencesTheFirstOut() {
    store.jobs().enqueue(waiting("a", 1), 9);
    take(NOON);
    assertEquals(Optional.empty(), take(NOON.plus(LEASE)));
    Progress progress = new Progress(Progress.Phase.IMPROVING, 200, 190, 0, 77);
    assertEquals(
        Renewal.GO_ON,
        store.jobs().renew("a", 1, NOON.plusSeconds(5), LEASE, Optional.of(progress)));
    assertEquals(Optional.of(progress), store.jobs().find(trip, "a").orElseThrow().progress());
    assertEquals(Optional.empty(), take(NOON.plusSeconds(15)));
    Job again = take(NOON.plusSeconds(15).plusMillis(1)).orElseThrow();
    assertEquals(2, again.attempt());
    assertEquals(
        Renewal.LOST, store.jobs().renew("a", 1, NOON.plusSeconds(16), LEASE, Optional.empty()));
    assertFalse(store.jobs().finish("a", 1, NOON, SOLVED));
    assertEquals(Optional.empty(), store.trips().split(trip, "a"));
    assertTrue(store.jobs().finish("a", 2, NOON, SOLVED));
    assertFalse(store.jobs().finish("a", 2, NOON, SOLVED));
  }

  @Test
  void jobThatNobodySurvivesIsGivenUp() {
    store.jobs().enqueue(waiting("a", 1), 9);
    Instant now = NOON;
    for (int attempt = 1; attempt <= MOST; attempt++) {
      assertEquals(attempt, take(now).orElseThrow().attempt());
      now = now.plus(LEASE).plusMillis(1);
    }
    assertEquals(Optional.empty(), take(now));
    assertEquals(Job.State.FAILED, store.jobs().find(trip, "a").orElseThrow().state());
    assertEquals(0, store.jobs().open());
  }

  @Test
  void handedBackJobIsTakenAtOnce() {
    store.jobs().enqueue(waiting("a", 1), 9);
    take(NOON);
    store.jobs().handBack("a", 1);
    assertEquals(2, take(NOON).orElseThrow().attempt());
    store.jobs().handBack("a", 1);
    assertEquals(Optional.empty(), take(NOON));
  }

  @Test
  void stopReachesTheWorker() {
    store.jobs().enqueue(waiting("a", 1), 9);
    take(NOON);
    assertFalse(store.jobs().stop("other", "a"));
    assertTrue(store.jobs().stop(trip, "a"));
    assertEquals(Renewal.STOP, store.jobs().renew("a", 1, NOON, LEASE, Optional.empty()));
    store.jobs().finish("a", 1, NOON, SOLVED);
    assertFalse(store.jobs().stop(trip, "a"));
  }

  @Test
  void manyWorkersTakeEachJobOnce() throws Exception {
    int jobs = 60;
    for (int i = 0; i < jobs; i++) {
      store.jobs().enqueue(waiting("job" + i, i), jobs);
    }
    List<String> taken = Collections.synchronizedList(new ArrayList<>());
    ExecutorService pool = Executors.newFixedThreadPool(6);
    try {
      List<Future<?>> workers = new ArrayList<>();
      for (int worker = 0; worker < 6; worker++) {
        workers.add(
            pool.submit(
                () -> {
                  // Under SKIP LOCKED a job may be passed over while another looks at it, so a
                  // worker ends only when nothing is left for anybody.
                  while (taken.size() < jobs) {
                    take(NOON).ifPresent(job -> taken.add(job.id()));
                  }
                }));
      }
      for (Future<?> worker : workers) {
        worker.get();
      }
    } finally {
      pool.shutdownNow();
    }
    assertEquals(jobs, taken.size());
    assertEquals(jobs, taken.stream().distinct().count());
  }
}
