package dev.faircarry.access;

/** What the bearer of a link is to a trip. */
public enum Role {
  /** Runs the trip: changes everything but a body mass that a hiker keeps to themselves. */
  LEADER,
  /** One hiker: own body mass, own kit, own card, and the split. */
  HIKER,
  /** Looks on: the trip and the split without any body mass. */
  VIEWER
}
