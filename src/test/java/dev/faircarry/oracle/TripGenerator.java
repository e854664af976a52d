package dev.faircarry.oracle;

import dev.faircarry.fixture.HikerOf;
import dev.faircarry.fixture.ItemOf;
import dev.faircarry.fixture.Trips;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * Small random trips without issues, with anything a trip can have. The same seed and shape give
 * the same trip.
 */
public final class TripGenerator {
  private static final List<String> NEEDS = List.of("water-treatment", "light", "flame", "fuel");
  private static final int[] GRAINS = {1, 2, 5, 10, 50};

  /**
   * How large trips are at most.
   *
   * @param pieces whole items, parts and units together
   * @param features what may be in them; each trip has a third or so of it
   */
  public record Shape(int hikers, int days, int pieces, Set<Feature> features) {

    /** Every feature. */
    public static Shape of(int hikers, int days, int pieces) {
      return new Shape(hikers, days, pieces, EnumSet.allOf(Feature.class));
    }

    public Shape without(Feature... left) {
      Set<Feature> rest = EnumSet.copyOf(features);
      rest.removeAll(List.of(left));
      return new Shape(hikers, days, pieces, rest);
    }
  }

  private final SplittableRandom random;
  private final Shape shape;
  private final Set<Feature> has = EnumSet.noneOf(Feature.class);
  private final List<String> hikers = new ArrayList<>();
  private final List<String> parties = new ArrayList<>();
  private final List<Integer> lastDays = new ArrayList<>();
  private final List<String> items = new ArrayList<>();

  /** References that rules may name: items and parts. */
  private final List<String> refs = new ArrayList<>();

  private final Trips trips;
  private final int days;
  private int piecesLeft;

  private TripGenerator(long seed, Shape shape) {
    this.random = new SplittableRandom(seed);
    this.shape = shape;
    for (Feature feature : Feature.values()) {
      // What restricts comes less often, or few trips could be split at all.
      int in = feature.compareTo(Feature.ROOM) >= 0 && feature != Feature.LEAVERS ? 4 : 2;
      if (chance(in) && shape.features().contains(feature)) {
        has.add(feature);
      }
    }
    days = between(1, shape.days());
    trips = Trips.days(days).grain(GRAINS[random.nextInt(GRAINS.length)]);
    piecesLeft = shape.pieces() - random.nextInt(1 + shape.pieces() / 3);
  }

  /** The trip of a seed. */
  public static Trip trip(long seed, Shape shape) {
    return new TripGenerator(seed, shape).build();
  }

  private Trip build() {
    trips.fractions("0." + between(10, 30), "0." + between(25, 50));
    if (has(Feature.BASIS_SHARED)) {
      trips.basisShared();
    }
    if (has(Feature.MINORS) && chance(4)) {
      trips.minorsMayCarryFlameAndFuel();
    }
    int group = between(chance(8) ? 1 : Math.min(2, shape.hikers()), shape.hikers());
    for (int i = 0; i < group; i++) {
      addHiker(i, group);
    }
    boolean boxes = has(Feature.CONTAINERS) && piecesLeft > 1;
    if (boxes) {
      addBox();
    }
    while (piecesLeft > 0) {
      addItem(boxes);
    }
    new RuleGenerator(random, trips, has, hikers, parties, items, refs).add();
    return trips.trip();
  }

  private void addHiker(int i, int group) {
    String id = "h" + (i + 1);
    hikers.add(id);
    // Somebody walks to the end.
    boolean leaves = has(Feature.LEAVERS) && days > 1 && i < group - 1 && random.nextBoolean();
    int lastDay = leaves ? between(1, days - 1) : days;
    lastDays.add(lastDay);
    trips.hiker(
        id,
        h -> {
          boolean stated = random.nextBoolean();
          if (stated) {
            h.target(between(400, 4000));
          }
          if (!stated || chance(3)) {
            h.body(between(5000, 16000));
          }
          if (chance(4)) {
            h.targetFraction("0." + between(10, 40));
          }
          if (has(Feature.MINORS) && chance(2)) {
            h.minor();
          }
          if (leaves) {
            h.leavesAfter(lastDay);
          }
          if (has(Feature.PARTY_HAS) && chance(2)) {
            String party = chance(2) ? "front" : "back";
            parties.add(party);
            h.party(party);
          }
          if (has(Feature.MAX_PIECES) && chance(2)) {
            h.maxPieces(random.nextInt(1 + shape.pieces()));
          }
          if (has(Feature.CAPS) && chance(2)) {
            h.capLoad(between(100, 3000));
          }
          if (has(Feature.CAPS) && chance(4)) {
            h.capFraction("0." + between(10, 40));
          }
          addPackAndKit(h);
          return h;
        });
  }

  private void addPackAndKit(HikerOf h) {
    if (has(Feature.ROOM) || chance(2)) {
      h.pack(
          between(0, 300),
          has(Feature.ROOM) && chance(2)
              ? Optional.of(Trips.milliliters(between(0, 20)))
              : Optional.empty(),
          has(Feature.CAPS) && chance(3)
              ? Optional.of(Trips.grams(between(200, 2500)))
              : Optional.empty());
    }
    int things = has(Feature.KIT) ? random.nextInt(4) : 0;
    for (int k = 0; k < things; k++) {
      int grams = between(0, 400);
      HikerOf.Thing thing = new HikerOf.Thing("k" + k, grams);
      if (chance(2)) {
        thing.volume(between(0, 5));
      }
      if (chance(4)) {
        thing.outside();
      }
      if (chance(5)) {
        thing.worn();
      }
      if (has(Feature.LUXURY) && chance(3)) {
        thing.luxury();
      }
      if (has(Feature.EVENLY) && chance(2)) {
        thing.evenly(random.nextInt(grams + 1));
      }
      if (has(Feature.PARTY_HAS) && chance(3)) {
        thing.covers(need());
      }
      if (has(Feature.CONTAINERS) && chance(4)) {
        thing.contains("food", between(0, 8));
      }
      h.kit(thing);
    }
  }

  private void addBox() {
    trips.item(
        name("box"), s -> s.mass(between(0, 400)).volume(between(0, 9)).contains("food", inner()));
    piecesLeft--;
  }

  private long inner() {
    return between(2, 15);
  }

  private void addItem(boolean boxes) {
    int kind = random.nextInt(4);
    if (kind == 0 && has(Feature.PARTS) && piecesLeft > 1) {
      addParts(boxes);
    } else if (kind == 1 && has(Feature.COUNTED)) {
      addCounted(boxes);
    } else {
      int grams = between(0, 900);
      trips.item(
          name("whole"),
          s -> {
            s.mass(grams);
            if (has(Feature.EVENLY) && chance(3)) {
              s.evenly(random.nextInt(grams + 1));
            } else {
              onDays(s);
            }
            return common(s, boxes);
          });
      piecesLeft--;
    }
  }

  private void addParts(boolean boxes) {
    int parts = between(2, Math.min(3, piecesLeft));
    String id = name("parts");
    trips.item(
        id,
        s -> {
          for (int p = 0; p < parts; p++) {
            String part = "p" + (p + 1);
            refs.add(id + "/" + part);
            s.part(part, between(0, 600), between(0, 5));
          }
          onDays(s);
          return common(s, boxes);
        });
    piecesLeft -= parts;
  }

  private void addCounted(boolean boxes) {
    int grams = between(0, 400);
    int persons = lastDays.stream().mapToInt(Integer::intValue).sum();
    boolean perPerson = has(Feature.PER_PERSON) && persons <= piecesLeft && chance(2);
    int count = perPerson ? persons : between(1, Math.min(4, piecesLeft));
    trips.item(
        name("units"),
        s -> {
          s.mass(grams);
          if (perPerson) {
            s.perPerson(1);
          } else {
            s.count(count);
          }
          int leaves = random.nextInt(grams + 1);
          if (has(Feature.USED_PER_DAY) && chance(2)) {
            usedPerDay(s, perPerson, count, leaves);
          } else if (has(Feature.EVENLY) && chance(3)) {
            s.evenly(leaves);
          } else if (!perPerson) {
            onDays(s);
          }
          return common(s, boxes);
        });
    piecesLeft -= count;
  }

  private void usedPerDay(ItemOf s, boolean perPerson, int count, int leaves) {
    if (perPerson && chance(2)) {
      s.usedByParty(leaves);
    } else if (chance(2)) {
      s.perDay(random.nextInt(count + 1), leaves);
    } else {
      List<Integer> listed = new ArrayList<>();
      for (int d = 0; d < days; d++) {
        listed.add(random.nextInt(count + 1));
      }
      s.perDay(listed, leaves);
    }
  }

  private ItemOf common(ItemOf s, boolean boxes) {
    if (chance(2)) {
      s.volume(between(0, 6));
    }
    if (chance(5)) {
      s.outside();
    }
    if (boxes && chance(2)) {
      s.goesInto("food");
    }
    if ((has(Feature.PARTY_HAS) || has(Feature.MINORS)) && chance(2)) {
      s.covers(need());
    }
    if (chance(4)) {
      s.owner(hikers.get(random.nextInt(hikers.size())));
    }
    return s;
  }

  private void onDays(ItemOf s) {
    if (has(Feature.ON_DAYS) && chance(2)) {
      for (int d = 1; d <= days; d++) {
        if (random.nextBoolean()) {
          s.onDays(d);
        }
      }
    }
  }

  private String name(String kind) {
    String id = kind + (items.size() + 1);
    items.add(id);
    refs.add(id);
    return id;
  }

  private String need() {
    return NEEDS.get(random.nextInt(NEEDS.size()));
  }

  private boolean has(Feature feature) {
    return has.contains(feature);
  }

  /** True once in so many times. */
  private boolean chance(int in) {
    return random.nextInt(in) == 0;
  }

  private int between(int least, int most) {
    return random.nextInt(least, most + 1);
  }
}
