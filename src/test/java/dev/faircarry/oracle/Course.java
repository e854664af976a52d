package dev.faircarry.oracle;

import dev.faircarry.split.CampHandover;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Opened;
import java.util.List;

/**
 * One way a thing goes through the trip.
 *
 * @param unused unused units by day (index day - 1) and hiker, on the morning
 * @param empties used units by day and hiker, on the morning
 * @param milligrams mass by day and hiker, on the morning
 */
record Course(
    List<Carry> carries,
    List<Opened> opened,
    List<CampHandover> handovers,
    int[][] unused,
    int[][] empties,
    long[][] milligrams) {
  Course {
    carries = List.copyOf(carries);
    opened = List.copyOf(opened);
    handovers = List.copyOf(handovers);
  }
}
