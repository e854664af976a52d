package dev.faircarry.solve;

import dev.faircarry.split.Demand;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.Rule;
import java.util.List;

/** Reads the party-has rules: one {@link Model.Need} for each rule and party. */
final class NeedBuilder {
  private final ModelBuilder b;

  NeedBuilder(ModelBuilder builder) {
    this.b = builder;
  }

  void build() {
    for (Rule rule : b.trip.rules()) {
      if (rule instanceof Rule.PartyHas has && b.active.test(new Demand.OfRule(rule.id()))) {
        List<String> parties = has.parties().isEmpty() ? List.copyOf(b.partyNames) : has.parties();
        for (String party : parties) {
          b.needs.add(need(has, b.partyIndex(party)));
        }
      }
    }
  }

  private Model.Need need(Rule.PartyHas has, int party) {
    int[] own = new int[b.days];
    int[] wanted = new int[b.days];
    for (int i = 0; i < b.hikers; i++) {
      if (b.partyOf[i] != party) {
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
    return new Model.Need(has.id(), party, own, wanted, covering);
  }
}
