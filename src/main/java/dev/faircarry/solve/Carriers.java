package dev.faircarry.solve;

import dev.faircarry.split.Demand;
import dev.faircarry.trip.Rule;
import java.util.Deque;
import java.util.List;

/** Who may hold a block: hikers present, less those whom rules about single pieces keep from it. */
final class Carriers {
  private final ModelBuilder b;

  Carriers(ModelBuilder builder) {
    b = builder;
  }

  /** By stage and hiker. Frozen pieces are dealt to their holders one by one, in call order. */
  boolean[][] of(List<Block.Content> contents) {
    boolean[][] allowed = new boolean[b.stageStart.length][b.hikers];
    for (int s = 0; s < allowed.length; s++) {
      int from = b.stageStart[s];
      boolean needed = contents.stream().anyMatch(c -> c.neededUntil() >= from);
      for (int i = 0; i < b.hikers && needed; i++) {
        allowed[s][i] = b.lastDay[i] >= from;
      }
      for (Block.Content content : contents) {
        if (s == 0) {
          freeze(allowed[0], content);
        }
        if (content.neededUntil() >= from) {
          narrow(allowed[s], content, from);
        }
      }
    }
    return allowed;
  }

  /** Of units used by the day only the number stays, see {@link NeedBuilder}. */
  private void freeze(boolean[] who, Block.Content content) {
    Deque<Integer> holders = b.frozen.get(content.ref());
    if (holders != null && !holders.isEmpty() && !NeedBuilder.usedByDay(b.trip, content.item())) {
      int holder = holders.remove();
      for (int i = 0; i < who.length; i++) {
        who[i] &= i == holder;
      }
    }
  }

  private void narrow(boolean[] who, Block.Content content, int from) {
    for (Rule rule : b.trip.rules()) {
      if (!b.asks(rule)) {
        continue;
      }
      if (rule instanceof Rule.Pinned pinned && Cutting.anyNames(pinned.pieces(), content)) {
        keep(who, List.of(pinned.hiker()), from);
      } else if (rule instanceof Rule.Only only && Cutting.anyNames(only.pieces(), content)) {
        keep(who, only.hikers(), from);
      } else if (rule instanceof Rule.Barred barred && Cutting.anyNames(barred.pieces(), content)) {
        for (int i = 0; i < b.hikers; i++) {
          who[i] &= !barred.hikers().contains(b.trip.hikers().get(i).id());
        }
      }
    }
    List<String> covers = b.trip.shared().get(content.item()).covers();
    if (!b.trip.policy().minorsMayCarryFlameAndFuel()
        && (covers.contains("flame") || covers.contains("fuel"))) {
      for (int i = 0; i < b.hikers; i++) {
        var hiker = b.trip.hikers().get(i);
        who[i] &= !(hiker.minor() && b.active.test(new Demand.OfMinor(hiker.id())));
      }
    }
  }

  /** The rule binds while one of its hikers is on the trip. */
  private void keep(boolean[] who, List<String> ids, int from) {
    boolean bound = false;
    for (int i = 0; i < b.hikers; i++) {
      bound |= ids.contains(b.trip.hikers().get(i).id()) && b.lastDay[i] >= from;
    }
    for (int i = 0; bound && i < b.hikers; i++) {
      who[i] &= ids.contains(b.trip.hikers().get(i).id());
    }
  }
}
