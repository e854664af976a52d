package dev.faircarry.bench;

import java.util.List;

/**
 * One trip with everybody's results. Gaps are in steps of the first level above the best that
 * anybody found.
 *
 * @param trivial own kit alone, or the sheer total, gives the first level
 * @param boundGap our value less the best bound; -1 where we found nothing
 * @param listGap widest distance of a level of our list from its bound, the levels before it being
 *     as they are; 0 where the list is proved, -1 where we found nothing
 * @param cpGap -1 where CP-SAT found nothing
 * @param glimpseGaps after each of the short times; -1 where nothing was found by then
 * @param handGap -1 with rules or several days, for which splitting by hand is not meant
 */
record Run(
    boolean trivial,
    long firstMillis,
    long listMillis,
    boolean firstProved,
    boolean listProved,
    long boundGap,
    long listGap,
    long cpFirstMillis,
    long cpListMillis,
    boolean cpFirstProved,
    boolean cpListProved,
    long cpGap,
    List<Long> glimpseGaps,
    long handGap) {
  Run {
    glimpseGaps = List.copyOf(glimpseGaps);
  }
}
