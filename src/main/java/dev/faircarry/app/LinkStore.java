package dev.faircarry.app;

import dev.faircarry.access.Link;
import dev.faircarry.access.TokenHash;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Keeps links, and of their secrets only the hash. */
public interface LinkStore {

  /** A link and the hash of its secret. */
  record Kept(Link link, TokenHash hash) {}

  void add(Link link, TokenHash hash);

  Optional<Kept> find(String linkId);

  /** The links of a trip, oldest first, ended ones included. */
  List<Link> of(String trip);

  /** Ends a link; false when the trip has no such link or it has ended by hand before. */
  boolean revoke(String trip, String linkId, Instant at);
}
