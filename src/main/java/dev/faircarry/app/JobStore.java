package dev.faircarry.app;

import dev.faircarry.split.Outcome;
import dev.faircarry.split.Progress;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * The queue of solves, shared by all instances on one store.
 *
 * <p>An instance that takes a job gets a lease and a fence, the number of the attempt. It renews
 * the lease while it works. When it dies, the lease runs out and another instance takes the job
 * with the next number; whatever the first still tries to write is refused by its old number.
 */
public interface JobStore {

  /**
   * Puts a job at the end of the queue.
   *
   * @param most how many jobs may be waiting or running; with so many there it is refused
   * @return whether there was room
   */
  boolean enqueue(Job job, int most);

  Optional<Job> find(String trip, String id);

  /** How many jobs are not over. */
  int open();

  /**
   * Takes the job that has waited longest, one whose lease has run out included.
   *
   * @param most how often a job may be begun before it is given up
   */
  Optional<Job> take(String instance, Instant now, Duration lease, int most);

  /** What a worker learns when it renews its lease. */
  enum Renewal {
    GO_ON,
    /** Somebody wants the job to end with the best so far. */
    STOP,
    /** The job is another's now: drop it, and write nothing. */
    LOST
  }

  Renewal renew(String id, int attempt, Instant now, Duration lease, Optional<Progress> progress);

  /**
   * Keeps the outcome, and a split under the job's id if it has one, in one go.
   *
   * @return false when the job is another's now or over; then nothing is kept
   */
  boolean finish(String id, int attempt, Instant at, Outcome outcome);

  /** Puts a job back for another instance to take at once. The attempt counts. */
  void handBack(String id, int attempt);

  /** Asks for a job to end; false when there is none or it is over. */
  boolean stop(String trip, String id);
}
