package dev.faircarry.split;

/**
 * Where a search stands.
 *
 * @param worstSteps highest step of the best split so far; -1 while there is none
 * @param boundSteps step below which no split can bring the worst hiker-morning
 */
public record Progress(
    Phase phase, long worstSteps, long boundSteps, int provedLevels, long effortSteps) {
  /** What the search is doing. */
  public enum Phase {
    CONSTRUCTING,
    IMPROVING,
    PROVING,
    EXPLAINING
  }
}
