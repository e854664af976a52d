package dev.faircarry.app;

import java.util.function.Function;

/** Where everything is kept. One port, several stores, one contract. */
public interface Store extends AutoCloseable {
  TripStore trips();

  LinkStore links();

  ReplyStore replies();

  JobStore jobs();

  ReadingStore readings();

  /**
   * Does several things as one: all of it is kept, or, if {@code work} throws, nothing. The store
   * given to {@code work} must not be used afterwards.
   */
  <T> T atomically(Function<Store, T> work);

  /** Whether the store answers now. */
  boolean ready();

  @Override
  void close();
}
