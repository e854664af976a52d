package dev.faircarry.trip.change;

/**
 * Why a change cannot be made.
 *
 * @param change position of the change, from 0
 * @param field field of the change that is at fault
 * @param value what stands there; never a mass of a person
 */
public record ChangeFault(int change, String field, String value, Kind kind) {
  /** What is wrong. */
  public enum Kind {
    UNKNOWN_HIKER,
    UNKNOWN_PIECE,
    UNKNOWN_THING,
    UNKNOWN_RULE,
    /** Another one has this id. */
    DUPLICATE_ID,
    /** Units of something that is not counted, or of what follows the party. */
    NOT_COUNTED,
    /** More units than there are, or less than one. */
    TOO_MANY_UNITS,
    /** A whole item in parts weighs nothing by itself. */
    NAME_A_PART,
    NO_SUCH_DAY,
    OUT_OF_RANGE
  }
}
