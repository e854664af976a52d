package dev.faircarry.app;

import java.time.Instant;
import java.util.Optional;

/** Remembers what requests with an idempotency key were answered. */
public interface ReplyStore {

  /**
   * An answer, to be given again word for word.
   *
   * @param request hash of the request it answered
   * @param location where what it made is found; empty if it made nothing
   */
  record Reply(String request, int status, String location, byte[] body) {}

  Optional<Reply> find(String scope, String key, Instant notBefore);

  /** Remembers an answer; an older one under the same key is forgotten. */
  void remember(String scope, String key, Reply reply, Instant at);

  /** Forgets answers from before this time; their number. */
  int forget(Instant before);
}
