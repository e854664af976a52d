package dev.faircarry.app;

import java.time.Duration;

/** Every limit of stored trips, their links and their solves. */
public final class StoreLimits {
  private StoreLimits() {}

  /** How long a deleted trip can be taken back before it is erased. */
  public static final Duration ERASE_AFTER = Duration.ofDays(30);

  /** How long an idempotency key is remembered. */
  public static final Duration KEY_KEPT = Duration.ofHours(24);

  public static final int KEY_LENGTH = 100;

  /** Trips that one creation key, or everybody without one, may keep. */
  public static final int TRIPS_PER_KEY = 10_000;

  public static final int LINKS_PER_TRIP = 500;

  /** Links that a hiker may make for themselves, ended ones included. */
  public static final int OWN_LINKS = 20;

  /** Readings of a scale that a trip keeps. */
  public static final int READINGS_PER_TRIP = 5_000;

  /** Entries of one page of a list, unless fewer are asked for. */
  public static final int PAGE = 100;

  /** Solves of stored trips that may wait or run, on all instances together. */
  public static final int OPEN_JOBS = 200;

  /** How long an instance may be silent before another takes its solves. */
  public static final Duration LEASE = Duration.ofSeconds(10);

  /** How often a solve is begun before it is given up. */
  public static final int ATTEMPTS = 5;

  /** How often an idle instance looks for solves of others. */
  public static final Duration LOOK_EVERY = Duration.ofMillis(500);

  /** The longest a caller can ask to wait for a solve. */
  public static final int WAIT_SECONDS = 30;

  /** Requests of one link, and of one address without a link, in a minute. */
  public static final int REQUESTS_PER_MINUTE = 600;

  /** Bearers whose requests are counted at a time; the one longest silent is forgotten. */
  public static final int COUNTED_BEARERS = 10_000;

  /** Splits of which an instance remembers what to do if somebody does not come. */
  public static final int ABSENCES_KNOWN = 200;

  /** Sealed bytes of trips that are kept open in memory, those used lately. */
  public static final int OPENED_BYTES = 4_000_000;

  /** Links that are kept in memory, those used lately. */
  public static final int LATELY_LINKS = 2_000;

  /** Bytes of documents that are kept written out in memory, those asked for lately. */
  public static final int WRITTEN_BYTES = 8_000_000;
}
