package dev.faircarry.oracle;

import dev.faircarry.fixture.HikerOf;
import dev.faircarry.fixture.ItemOf;
import dev.faircarry.fixture.Trips;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Rules that a known split keeps: heaviest piece to the least loaded hiker, food in canisters. */
final class PlantedRules {
  private static final String NEED = "water-treatment";

  private final SplittableRandom random;
  private final FamilyTrips of;
  private final Family family;
  private final Set<String> covering = new LinkedHashSet<>();

  PlantedRules(SplittableRandom random, FamilyTrips of, Family family) {
    this.random = random;
    this.of = of;
    this.family = family;
  }

  /** Every second hiker has a canister, and only they carry food. */
  private boolean mayHold(int hiker, FamilyTrips.Piece piece) {
    return !piece.food() || hiker % 2 == 0;
  }

  void plant() {
    long[] load = of.kitGrams.clone();
    List<Integer> order = new ArrayList<>(IntStream.range(0, of.pieces.size()).boxed().toList());
    order.sort((x, y) -> Long.compare(of.pieces.get(y).grams(), of.pieces.get(x).grams()));
    for (int p : order) {
      int best = -1;
      for (int i = 0; i < load.length; i++) {
        if (mayHold(i, of.pieces.get(p))
            && (best < 0 || load[i] * of.targetGrams[best] < load[best] * of.targetGrams[i])) {
          best = i;
        }
      }
      of.planted[p] = best;
      load[best] += of.pieces.get(p).grams();
    }
    // Each of the two parties keeps a whole thing that covers the need.
    for (int party = 0; party < Math.min(2, load.length); party++) {
      for (int p = 0; p < of.planted.length; p++) {
        if (of.planted[p] % 2 == party && free(p)) {
          covering.add(of.pieces.get(p).item());
          break;
        }
      }
    }
  }

  /** A whole thing that is there on every day. */
  private boolean free(int p) {
    FamilyTrips.Piece piece = of.pieces.get(p);
    return piece.part().isEmpty() && piece.item().startsWith("w") && !piece.item().equals("water");
  }

  void restrict(HikerOf h, int i) {
    long volume = 0;
    long food = 0;
    int count = 0;
    for (int p = 0; p < of.planted.length; p++) {
      if (of.planted[p] == i) {
        FamilyTrips.Piece piece = of.pieces.get(p);
        volume += piece.food() ? 0 : piece.milliliters();
        food += piece.food() ? piece.milliliters() : 0;
        count++;
      }
    }
    h.pack(
        0,
        Optional.of(Trips.milliliters(volume * random.nextInt(102, 130) / 100)),
        Optional.empty());
    if (i % 2 == 0) {
      h.kit(new HikerOf.Thing("canister", 0).contains("food", food * 5 / 4 + 1));
    }
    if (random.nextInt(4) == 0) {
      h.maxPieces(count + random.nextInt(2));
    }
    h.party(i % 2 == 0 ? "front" : "back");
  }

  ItemOf cover(ItemOf s, String id) {
    return covering.contains(id) ? s.covers(NEED) : s;
  }

  void addTo(Trips trips) {
    int some = Math.max(1, of.pieces.size() / 20);
    for (int r = 0; r < some; r++) {
      FamilyTrips.Piece pinned = of.pieces.get(whole());
      trips.pinned(hiker(holder(pinned.item())), pinned.ref());
      FamilyTrips.Piece barred = of.pieces.get(whole());
      int other = random.nextInt(family.hikers());
      if (other != holder(barred.item())) {
        trips.barred(List.of(hiker(other)), barred.ref());
      }
      only(trips, whole());
      pair(trips, whole(), whole());
    }
    if (covering.size() == 2) {
      trips.partyHas(NEED, 1);
    }
  }

  private void only(Trips trips, int p) {
    Set<Integer> who = new TreeSet<>(Set.of(of.planted[p]));
    for (int more = 0; more < Math.max(1, family.hikers() / 2); more++) {
      who.add(random.nextInt(family.hikers()));
    }
    trips.only(who.stream().map(this::hiker).toList(), of.pieces.get(p).ref());
  }

  /** Together where they are, apart where they are not. */
  private void pair(Trips trips, int one, int other) {
    if (one == other) {
      return;
    }
    String[] refs = {of.pieces.get(one).ref(), of.pieces.get(other).ref()};
    if (of.planted[one] == of.planted[other]) {
      trips.together(refs);
    } else {
      trips.apart(refs);
    }
  }

  /** Some whole thing that is there on every day; the last piece always is one. */
  private int whole() {
    for (int tries = 0; tries < 100; tries++) {
      int p = random.nextInt(of.pieces.size());
      if (free(p)) {
        return p;
      }
    }
    return of.pieces.size() - 1;
  }

  private int holder(String item) {
    for (int p = 0; p < of.planted.length; p++) {
      if (of.pieces.get(p).item().equals(item)) {
        return of.planted[p];
      }
    }
    throw new IllegalArgumentException(item);
  }

  private String hiker(int i) {
    return "h" + (i + 1);
  }
}
