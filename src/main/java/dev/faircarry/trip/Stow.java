package dev.faircarry.trip;

/** Where in the pack a thing goes. What is stowed outside takes no room inside. */
public enum Stow {
  AT_HAND,
  TOP,
  INSIDE,
  OUTSIDE,
  BOTTOM
}
