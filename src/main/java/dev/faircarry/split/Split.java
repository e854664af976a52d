package dev.faircarry.split;

import java.util.List;

/**
 * Who carries what. The carries are those of departure; camp handovers move what leavers hold to
 * those who stay.
 *
 * @param carries in any order, at most one entry for a hiker and a piece
 * @param opened the opening plan: which of the units used per day come from whose pack
 */
public record Split(List<Carry> carries, List<Opened> opened, List<CampHandover> handoversAtCamp) {
  public Split {
    carries = List.copyOf(carries);
    opened = List.copyOf(opened);
    handoversAtCamp = List.copyOf(handoversAtCamp);
  }
}
