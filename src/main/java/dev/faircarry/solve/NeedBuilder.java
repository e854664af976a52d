package dev.faircarry.solve;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.Use;
import java.util.List;

/**
 * Reads what hikers must hold at least: one {@link Model.Need} for each party-has rule and party,
 * and one for each hiker with frozen units that are used by the day. Those units are
 * interchangeable, so it stays open which of them stay; other frozen pieces are seen to by {@link
 * BlockBuilder}.
 */
final class NeedBuilder {
  private final ModelBuilder b;

  NeedBuilder(ModelBuilder builder) {
    this.b = builder;
  }

  void build() {
    for (Rule rule : b.trip.rules()) {
      if (rule instanceof Rule.PartyHas has && b.asks(rule)) {
        List<String> parties = has.parties().isEmpty() ? List.copyOf(b.partyNames) : has.parties();
        for (String party : parties) {
          b.needs.add(need(has, b.partyIndex(party)));
        }
      }
    }
    for (int k = 0; k < b.trip.shared().size(); k++) {
      var holders = b.frozen.get(PieceRef.item(b.trip.shared().get(k).id()));
      if (holders != null && usedByDay(b.trip, k)) {
        freeze(k, holders);
      }
    }
  }

  /** Whether an item is in units that are used by the day. */
  static boolean usedByDay(Trip trip, int item) {
    return trip.shared().get(item).form() instanceof Form.Counted form
        && form.use().isPresent()
        && form.use().get() instanceof Use.UnitsPerDay;
  }

  /** Everybody keeps their units on the first morning; where fewer are left, the first ones do. */
  private void freeze(int item, Iterable<Integer> holders) {
    boolean[] covering = new boolean[b.trip.shared().size()];
    covering[item] = true;
    long left =
        b.blocks.stream()
            .flatMap(block -> block.contents().stream())
            .filter(c -> c.item() == item)
            .count();
    int[] kept = new int[b.hikers];
    for (int holder : holders) {
      kept[holder] += left-- > 0 ? 1 : 0;
    }
    for (int i = 0; i < b.hikers; i++) {
      if (kept[i] > 0) {
        boolean[] who = new boolean[b.hikers];
        who[i] = true;
        int[] wanted = new int[b.days];
        wanted[0] = kept[i];
        b.needs.add(new Model.Need(who, new int[b.days], wanted, covering));
      }
    }
  }

  private Model.Need need(Rule.PartyHas has, int party) {
    int[] own = new int[b.days];
    int[] wanted = new int[b.days];
    boolean[] who = new boolean[b.hikers];
    for (int i = 0; i < b.hikers; i++) {
      who[i] = b.partyOf[i] == party;
      if (!who[i]) {
        continue;
      }
      for (int d = 0; d <= b.lastDay[i]; d++) {
        wanted[d] = has.atLeast();
        for (KitItem item : b.trip.hikers().get(i).kit()) {
          own[d] += item.covers().contains(has.covers()) ? 1 : 0;
        }
      }
    }
    boolean[] covering = new boolean[b.trip.shared().size()];
    for (int k = 0; k < covering.length; k++) {
      covering[k] = b.trip.shared().get(k).covers().contains(has.covers());
    }
    return new Model.Need(who, own, wanted, covering);
  }
}
