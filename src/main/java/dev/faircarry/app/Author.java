package dev.faircarry.app;

import dev.faircarry.access.Link;
import dev.faircarry.access.Role;
import java.util.Optional;

/**
 * Who made a change, by role: links have no other name.
 *
 * @param hiker whose link it was, for a hiker
 */
public record Author(Role role, Optional<String> hiker) {

  /** Whoever held this link. */
  public static Author of(Link link) {
    return new Author(link.role(), link.hiker());
  }
}
