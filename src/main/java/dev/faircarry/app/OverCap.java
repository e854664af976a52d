package dev.faircarry.app;

import dev.faircarry.check.HikerLoads;
import dev.faircarry.check.Morning;
import dev.faircarry.check.Verdict;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;

/**
 * A load that passes its cap on a morning.
 *
 * @param overNanograms by how much
 * @param ownKitOverNanograms the part of it that own pack and kit alone already cause
 * @param excessThousandths the same in thousandths of the target load, rounded up
 */
public record OverCap(
    String hiker,
    String name,
    int day,
    long loadMilligrams,
    long capNanograms,
    long overNanograms,
    long ownKitOverNanograms,
    long excessThousandths) {
  private static final long NANOGRAMS_PER_MILLIGRAM = 1_000_000L;

  /** All of them, by hiker in the trip's order, then by day. */
  public static List<OverCap> of(Trip trip, Verdict verdict) {
    TripNames names = new TripNames(trip);
    List<OverCap> found = new ArrayList<>();
    for (HikerLoads loads : verdict.hikers()) {
      for (Morning m : loads.mornings()) {
        if (m.excessThousandths() > 0 && m.capNanograms().isPresent()) {
          found.add(of(loads.hiker(), names.hiker(loads.hiker()), m, m.capNanograms().getAsLong()));
        }
      }
    }
    return found;
  }

  private static OverCap of(String hiker, String name, Morning m, long cap) {
    long over = m.loadMilligrams() * NANOGRAMS_PER_MILLIGRAM - cap;
    long own = (m.loadMilligrams() - m.sharedMilligrams()) * NANOGRAMS_PER_MILLIGRAM - cap;
    return new OverCap(
        hiker,
        name,
        m.day(),
        m.loadMilligrams(),
        cap,
        over,
        Math.max(0, own),
        m.excessThousandths());
  }
}
