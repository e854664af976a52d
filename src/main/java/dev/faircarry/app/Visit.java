package dev.faircarry.app;

import dev.faircarry.access.Link;
import dev.faircarry.access.Role;
import dev.faircarry.access.Sight;

/**
 * Somebody with a link that holds, at its trip.
 *
 * @param sight what they may see of it
 */
public record Visit(Link link, StoredTrip stored, Sight sight) {

  public Role role() {
    return link.role();
  }

  public boolean leads() {
    return link.role() == Role.LEADER;
  }

  public Author author() {
    return Author.of(link);
  }
}
