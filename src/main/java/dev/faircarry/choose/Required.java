package dev.faircarry.choose;

import java.util.Map;

/**
 * A need as it must be met.
 *
 * @param atLeast so much in the whole group: a number, or millilitres
 * @param room whether it is a volume
 * @param perParty so many things of its own for each party named here
 * @param reason where the need comes from, in one sentence
 */
public record Required(
    String need, long atLeast, boolean room, Map<String, Integer> perParty, String reason) {
  public Required {
    perParty = Map.copyOf(perParty);
  }

  /** Whether anything is asked for by the need itself. */
  public boolean asks() {
    return atLeast > 0 || perParty.values().stream().anyMatch(n -> n > 0);
  }
}
