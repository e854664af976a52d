package dev.faircarry.access;

import java.time.Instant;
import java.util.Optional;

/**
 * A way into one trip. Who holds the token of a link may do what its role allows.
 *
 * @param id names the link in lists and for revoking; opens nothing by itself
 * @param trip id of the trip it leads to
 * @param hiker whose link it is; there exactly when the role is {@link Role#HIKER}
 * @param expires when it ends, if it ends by itself
 * @param revoked when it was ended by hand
 */
public record Link(
    String id,
    String trip,
    Role role,
    Optional<String> hiker,
    Instant created,
    Optional<Instant> expires,
    Optional<Instant> revoked) {
  public Link {
    if (hiker.isPresent() != (role == Role.HIKER)) {
      throw new IllegalArgumentException("a hiker goes with the role of a hiker and no other");
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
