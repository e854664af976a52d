package dev.faircarry.oracle;

import dev.faircarry.fixture.Trips;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Larger random trips by family. Rules are made from a split that keeps them all, so that every
 * trip can be split. Masses are whole grams.
 */
public final class FamilyTrips {
  /** A thing to carry as the generator sees it; {@code item} is its place in the list of items. */
  record Piece(String item, String part, long grams, long milliliters, boolean food) {
    String ref() {
      return part.isEmpty() ? item : item + "/" + part;
    }
  }

  private final Family family;
  private final SplittableRandom random;
  final List<Piece> pieces = new ArrayList<>();
  final long[] targetGrams;
  final long[] kitGrams;

  /** Holder of each piece in the split that the rules are made from. */
  final int[] planted;

  private FamilyTrips(long seed, Family family) {
    this.family = family;
    random = new SplittableRandom(seed * 1_000_003 + family.hikers() * 977L + family.pieces());
    targetGrams = new long[family.hikers()];
    kitGrams = new long[family.hikers()];
    planted = new int[family.pieces()];
  }

  /** The trip of a seed. */
  public static Trip trip(long seed, Family family) {
    return new FamilyTrips(seed, family).build();
  }

  private Trip build() {
    long all = 0;
    for (int i = 0; i < targetGrams.length; i++) {
      targetGrams[i] = random.nextLong(9_000, 18_001);
      all += targetGrams[i];
    }
    long sharedGrams = all * family.sharedPercent() / 100;
    for (int i = 0; i < kitGrams.length; i++) {
      int uneven =
          switch (family.hardness()) {
            case EASY, HARD -> random.nextInt(97, 104);
            case MIXED, ROUNDED -> random.nextInt(75, 121);
          };
      kitGrams[i] = targetGrams[i] * (100 - family.sharedPercent()) / 100 * uneven / 100;
    }
    Trips trips = Trips.days(family.days()).grain(family.grain());
    List<Long> masses = masses(sharedGrams);
    List<ItemPlan> items = family.days() > 1 ? overDays(masses) : wholes(masses);
    PlantedRules rules = null;
    if (family.ruled()) {
      rules = new PlantedRules(random, this, family);
      rules.plant();
    }
    for (int i = 0; i < family.hikers(); i++) {
      addHiker(trips, i, rules);
    }
    for (ItemPlan item : items) {
      item.add(trips, rules);
    }
    if (rules != null) {
      rules.addTo(trips);
    }
    return trips.trip();
  }

  private void addHiker(Trips trips, int i, @org.jspecify.annotations.Nullable PlantedRules rules) {
    trips.hiker(
        "h" + (i + 1),
        h -> {
          h.body(targetGrams[i] * 5).kit("kit", kitGrams[i]);
          if (rules != null) {
            rules.restrict(h, i);
          }
          return h;
        });
  }

  private List<Long> masses(long sharedGrams) {
    double[] relative = new double[family.pieces()];
    double sum = 0;
    for (int p = 0; p < relative.length; p++) {
      relative[p] =
          switch (family.hardness()) {
            case EASY -> Math.pow(2, random.nextDouble() * 4);
            case HARD -> 1 + random.nextDouble();
            case MIXED, ROUNDED -> Math.pow(2, random.nextDouble() * 6);
          };
      sum += relative[p];
    }
    List<Long> masses = new ArrayList<>();
    for (double part : relative) {
      long grams = Math.round(sharedGrams * part / sum);
      masses.add(
          family.hardness() == Family.Hardness.ROUNDED
              ? Math.max(1, Math.round(grams / 100.0)) * 100
              : Math.max(5, grams));
    }
    return masses;
  }

  /** How one item gets into the trip. */
  private interface ItemPlan {
    void add(Trips trips, @org.jspecify.annotations.Nullable PlantedRules rules);
  }

  private List<ItemPlan> wholes(List<Long> masses) {
    List<ItemPlan> plans = new ArrayList<>();
    for (long grams : masses) {
      plans.add(whole(grams, false));
    }
    return plans;
  }

  private ItemPlan whole(long grams, boolean gas) {
    String id = (gas ? "gas" : "w") + (pieces.size() + 1);
    Piece piece = new Piece(id, "", grams, grams * random.nextInt(1, 5), false);
    pieces.add(piece);
    return (trips, rules) ->
        trips.item(
            id,
            s -> {
              s.mass(grams).volume(piece.milliliters());
              if (gas) {
                s.evenly(grams * 2 / 5);
              }
              return rules == null ? s : rules.cover(s, id);
            });
  }

  /** Shelters in parts, meals used by the day, gas, water for a dry stretch, and whole things. */
  private List<ItemPlan> overDays(List<Long> masses) {
    List<ItemPlan> plans = new ArrayList<>();
    int left = masses.size();
    int perDay = Math.max(1, masses.size() / 4 / family.days());
    left -= units(plans, "meal", masses.get(left - 1), perDay * family.days(), perDay);
    left -= units(plans, "water", masses.get(left - 1), Math.max(1, masses.size() / 12), 0);
    for (int shelter = 1; shelter <= 2 && left > 8; shelter++) {
      left -= parts(plans, "shelter" + shelter, masses.subList(left - 3, left));
    }
    for (int gas = 0; gas < 2 && left > 2; gas++) {
      plans.add(whole(masses.get(--left), true));
    }
    while (left > 0) {
      plans.add(whole(masses.get(--left), false));
    }
    return plans;
  }

  /**
   * @param perDay units used a day; 0 for what is there on one day only
   */
  private int units(List<ItemPlan> plans, String id, long grams, int count, int perDay) {
    long milliliters = grams * 2;
    for (int u = 0; u < count; u++) {
      pieces.add(new Piece(id, "", grams, milliliters, perDay > 0));
    }
    int dryDay = random.nextInt(2, family.days() + 1);
    plans.add(
        (trips, rules) ->
            trips.item(
                id,
                s -> {
                  s.count(count).mass(grams).volume(milliliters);
                  if (perDay > 0) {
                    s.perDay(perDay, grams / 15);
                  } else {
                    s.onDays(dryDay);
                  }
                  return rules != null && perDay > 0 ? s.goesInto("food") : s;
                }));
    return count;
  }

  private int parts(List<ItemPlan> plans, String id, List<Long> masses) {
    List<Piece> mine = new ArrayList<>();
    for (long grams : masses) {
      mine.add(new Piece(id, "p" + (mine.size() + 1), grams, grams * 3, false));
    }
    pieces.addAll(mine);
    plans.add(
        (trips, rules) ->
            trips.item(
                id,
                s -> {
                  mine.forEach(p -> s.part(p.part(), p.grams(), p.milliliters()));
                  return rules == null ? s : rules.cover(s, id);
                }));
    return masses.size();
  }
}
