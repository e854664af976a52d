package dev.faircarry.access;

import java.time.Instant;
import java.util.Optional;

/**
 * A way into one trip. Who holds the token of a link may do what its role allows.
 *
 * @param id names the link in lists and for revoking; opens nothing by itself
 * @param trip id of the trip it leads to
 * @param hiker whose link it is; there exactly when the role is {@link Role#HIKER}
 * @param own whether the hiker made it with an earlier link, so that the leader, who made that one,
 *     never saw its token
 * @param expires when it ends, if it ends by itself
 * @param revoked when it was ended by hand
 */
public record Link(
    String id,
    String trip,
    Role role,
    Optional<String> hiker,
    boolean own,
    Instant created,
    Optional<Instant> expires,
    Optional<Instant> revoked) {
  public Link {
    if (hiker.isPresent() != (role == Role.HIKER)) {
      throw new IllegalArgumentException("a hiker goes with the role of a hiker and no other");
    }
    if (own && role != Role.HIKER) {
      throw new IllegalArgumentException("only hikers make links of their own");
    }
  }

  /** Whether it still opens anything. */
  public boolean holds(Instant now) {
    return revoked.isEmpty() && expires.map(now::isBefore).orElse(true);
  }

  /** Whether it is the link of this hiker. */
  public boolean isOf(String id) {
    return hiker.filter(id::equals).isPresent();
  }
}
