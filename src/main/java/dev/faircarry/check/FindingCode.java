package dev.faircarry.check;

/** What can be found in a split. */
public enum FindingCode {
  NOT_CARRIED(true),
  CARRIED_TWICE(true),
  UNKNOWN_PIECE(true),
  UNKNOWN_HIKER(true),
  PINNED_ELSEWHERE(true),
  NOT_ALLOWED(true),
  BARRED(true),
  MINOR_CARRIES_FLAME_OR_FUEL(true),
  NOT_TOGETHER(true),
  NOT_APART(true),
  PARTY_LACKS(true),
  NO_ROOM(true),
  NO_CONTAINER(true),
  TOO_MANY_PIECES(true),
  OPENING_PLAN_WRONG(true),
  CAMP_HANDOVER_WRONG(true),
  CLAIM_WRONG(true),
  OPENING_PLAN_ASSUMED(false),
  OVER_CAP(false),
  OWN_KIT_OVER_CAP(false),
  OWN_KIT_OVERFILLS(false),
  LOAD_RATING_PASSED(false),
  MINOR_ABOVE_TARGET(false),
  ESSENTIAL_MISSING(false),
  NEED_NOT_COVERED(false),
  SCARCE_TOGETHER(false),
  FUEL_WITH_FOOD(false),
  MASSES_FROM_LABELS(false),
  STALE(false);

  private final boolean breaksSplit;

  FindingCode(boolean breaksSplit) {
    this.breaksSplit = breaksSplit;
  }

  /**
   * Whether a split with this finding is no split at all: something is missing or a hard rule is
   * broken.
   */
  public boolean breaksSplit() {
    return breaksSplit;
  }

  /** The code as it stands in documents: {@code not-carried}. */
  public String text() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
