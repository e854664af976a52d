package dev.faircarry.app;

import dev.faircarry.split.Outcome;
import dev.faircarry.split.Progress;
import java.time.Instant;
import java.util.Optional;

/**
 * A solve that goes on behind the caller's back.
 *
 * @param id the job's id; the split it finds gets the same
 * @param revision the revision of the trip it answers
 * @param effortSteps search steps it may spend
 * @param attempt how often an instance has begun it; 0 while it waits for the first
 * @param stopAsked whether somebody wants it to end with the best so far
 * @param progress where the search stands
 * @param outcome what came of it; there exactly when it is done
 */
public record Job(
    String id,
    String trip,
    int revision,
    long effortSteps,
    Author by,
    Instant asked,
    State state,
    int attempt,
    boolean stopAsked,
    Optional<Progress> progress,
    Optional<Outcome> outcome) {

  /** Where a job is. */
  public enum State {
    /** Nobody has begun it, or whoever had has handed it back. */
    WAITING,
    /** An instance is at it. */
    RUNNING,
    /** It has its outcome. */
    DONE,
    /** It was begun as often as allowed and never finished. */
    FAILED
  }

  /** Whether it will not change any more. */
  public boolean over() {
    return state == State.DONE || state == State.FAILED;
  }
}
