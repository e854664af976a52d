package dev.faircarry.app;

/** What came of a change. */
public sealed interface ChangeResult {

  /** It is kept, as the revision of this number. */
  record Kept(int revision) implements ChangeResult {}

  /** Somebody else changed the trip meanwhile; the newest revision has this number. */
  record Stale(int revision) implements ChangeResult {}

  /** There is no such trip, or it is deleted. */
  record Missing() implements ChangeResult {}
}
