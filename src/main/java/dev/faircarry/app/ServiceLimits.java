package dev.faircarry.app;

import dev.faircarry.trip.Limits;

/**
 * Every limit of the running service that is not a limit of a document; openapi/ states the same
 * numbers and a test compares them.
 */
public final class ServiceLimits {
  private ServiceLimits() {}

  /** Search steps spent when nobody says how many. */
  public static final long DEFAULT_EFFORT_STEPS = 20_000_000L;

  /** Search steps a departure check spends on how far a split is from the best possible. */
  public static final long DEPARTURE_EFFORT_STEPS = 2_000_000L;

  /** Most search steps one request may ask for. */
  public static final long MAX_EFFORT_STEPS = 500_000_000L;

  public static final long MIN_EFFORT_STEPS = 1L;

  /** Safety clock of one search; an answer that it cut says so. */
  public static final int CLOCK_SECONDS = 60;

  /** Searches that may wait for a core; more are turned away with the time to come back. */
  public static final int WAITING_SOLVES = 32;

  public static final int RETRY_AFTER_SECONDS = 5;

  /** A request body: one document, which may hold a trip and a split. */
  public static final int REQUEST_BYTES = Limits.DOCUMENT_BYTES;

  /** So much of a body that is too large is still taken in, before the connection is closed. */
  public static final int DRAINED_BYTES = 16_000_000;

  /** So much of a body is taken in before a thread is given to it; the rest holds a thread. */
  public static final int EAGER_BYTES = 2 * REQUEST_BYTES;

  /** What each read of a body counts for beside its bytes: they keep a buffer. */
  public static final int EAGER_BYTES_PER_READ = 64;

  /** So much of an answer waits for a slow reader; the rest holds a thread. */
  public static final int GATHERED_BYTES = 8_000_000;

  /** How long a body may hold a thread. */
  public static final int BODY_SECONDS = 20;

  /** Request line and all headers. */
  public static final int REQUEST_HEADER_BYTES = 16_384;

  /** A connection on which nothing happens is closed. */
  public static final int IDLE_SECONDS = 30;

  /** How long requests under way may take to end when the service stops. */
  public static final int STOP_SECONDS = 20;

  public static final int REQUEST_THREADS = 64;
  public static final int DEFAULT_PORT = 8080;
  public static final String DEFAULT_HOST = "127.0.0.1";
}
