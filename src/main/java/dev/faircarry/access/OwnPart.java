package dev.faircarry.access;

import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;

/**
 * What a hiker may change with a link of their own: body mass, target and cap, pack, kit, the most
 * pieces, and the name. Who walks how long with whom, and who is a minor, is the leader's to say.
 */
public final class OwnPart {
  private OwnPart() {}

  /** Whether a change stays within what this hiker may change. */
  public static boolean allows(Trip before, Trip after, String hiker) {
    List<Hiker> expected = new ArrayList<>();
    for (Hiker old : before.hikers()) {
      expected.add(
          old.id().equals(hiker)
              ? after.hikers().stream()
                  .filter(h -> h.id().equals(hiker))
                  .findFirst()
                  .map(changed -> merged(old, changed))
                  .orElse(old)
              : old);
    }
    return after.equals(
        new Trip(
            before.name(),
            before.days(),
            before.policy(),
            expected,
            before.shared(),
            before.rules(),
            before.plan()));
  }

  private static Hiker merged(Hiker old, Hiker changed) {
    return new Hiker(
        old.id(),
        changed.name(),
        changed.bodyMass(),
        changed.targetLoad(),
        changed.targetFraction(),
        changed.capFraction(),
        changed.capLoad(),
        changed.maxPieces(),
        old.party(),
        old.minor(),
        old.leavesAfterDay(),
        changed.pack(),
        changed.kit());
  }
}
