package dev.faircarry.oracle;

import dev.faircarry.fixture.Trips;
import dev.faircarry.trip.PieceRef;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;

/** Adds random rules to a trip; they may well contradict one another. */
final class RuleGenerator {
  private final SplittableRandom random;
  private final Trips trips;
  private final Set<Feature> has;
  private final List<String> hikers;
  private final List<String> parties;
  private final List<String> items;
  private final List<String> refs;

  RuleGenerator(
      SplittableRandom random,
      Trips trips,
      Set<Feature> has,
      List<String> hikers,
      List<String> parties,
      List<String> items,
      List<String> refs) {
    this.random = random;
    this.trips = trips;
    this.has = has;
    this.hikers = hikers;
    this.parties = parties.stream().distinct().toList();
    this.items = items;
    this.refs = refs;
  }

  void add() {
    if (has.contains(Feature.PINNED)) {
      trips.pinned(one(hikers), some(refs, 2));
    }
    if (has.contains(Feature.ONLY)) {
      trips.only(List.of(some(hikers, 2)), some(refs, 2));
    }
    if (has.contains(Feature.BARRED)) {
      trips.barred(List.of(some(hikers, 2)), some(refs, 2));
    }
    if (has.contains(Feature.TOGETHER)) {
      trips.together(some(refs, 3));
    }
    if (has.contains(Feature.APART)) {
      trips.apart(random.nextInt(3) == 0 ? apartParts() : some(items, 3));
    }
    if (has.contains(Feature.PARTY_HAS)) {
      String need = random.nextBoolean() ? "water-treatment" : "light";
      String[] named = random.nextBoolean() || parties.isEmpty() ? new String[0] : some(parties, 2);
      trips.partyHas(need, random.nextInt(4) == 0 ? 2 : 1, named);
    }
  }

  /** Parts, and whole items none of whose parts is among them. */
  private String[] apartParts() {
    List<String> found = new ArrayList<>();
    for (String text : some(refs, refs.size())) {
      PieceRef ref = PieceRef.of(text);
      boolean overlaps =
          found.stream()
              .map(PieceRef::of)
              .anyMatch(
                  r -> r.item().equals(ref.item()) && (r.part().isEmpty() || ref.part().isEmpty()));
      if (!overlaps && found.size() < 4) {
        found.add(text);
      }
    }
    return found.toArray(String[]::new);
  }

  private String one(List<String> names) {
    return names.get(random.nextInt(names.size()));
  }

  /** At least one and at most so many, each once. */
  private String[] some(List<String> names, int most) {
    List<String> shuffled = new ArrayList<>(names);
    Collections.shuffle(shuffled, new Random(random.nextLong()));
    int count = 1 + random.nextInt(Math.min(most, names.size()));
    return shuffled.subList(0, count).toArray(String[]::new);
  }
}
