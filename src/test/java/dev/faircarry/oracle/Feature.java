package dev.faircarry.oracle;

/** What a generated trip may have in it. */
public enum Feature {
  KIT,
  LUXURY,
  EVENLY,
  CAPS,
  MINORS,
  BASIS_SHARED,
  PARTS,
  COUNTED,
  USED_PER_DAY,
  PER_PERSON,
  ON_DAYS,
  ROOM,
  CONTAINERS,
  MAX_PIECES,
  LEAVERS,
  PINNED,
  ONLY,
  BARRED,
  TOGETHER,
  APART,
  PARTY_HAS
}
