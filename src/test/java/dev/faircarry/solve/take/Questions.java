package dev.faircarry.solve.take;

import dev.faircarry.choose.Candidate;
import dev.faircarry.choose.Question;
import dev.faircarry.choose.Required;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SplittableRandom;

/** Questions for the tests: seeded, with every kind of candidate and need. */
final class Questions {
  private Questions() {}

  private static final List<String> NEEDS = List.of("sleeping", "pot", "light", "pole");

  static Question random(long seed, int things, int offers) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Candidate> candidates = new ArrayList<>();
    for (int i = 0; i < things; i++) {
      boolean kit = random.nextBoolean();
      boolean free = random.nextInt(4) > 0;
      candidates.add(
          new Candidate(
              kit ? "h/t" + i : "t" + i,
              kit ? Candidate.Kind.KIT : Candidate.Kind.SHARED,
              "Thing " + i,
              random.nextInt(1, 60) * 10_000L,
              0,
              !free && random.nextBoolean() ? 1 : 0,
              1,
              kit ? Optional.of(random.nextBoolean() ? "a" : "b") : Optional.empty(),
              covers(random, free ? 1 : 0),
              Map.of(),
              List.of(),
              free));
    }
    for (int i = 0; i < offers; i++) {
      List<String> replaces =
          random.nextInt(3) == 0 && things > 0
              ? List.of(candidates.get(random.nextInt(things)).ref())
              : List.of();
      candidates.add(
          new Candidate(
              "o" + i,
              Candidate.Kind.OFFER,
              "Offer " + i,
              random.nextInt(1, 40) * 10_000L,
              random.nextInt(3) == 0 ? 0 : random.nextInt(1, 20) * 500L,
              0,
              random.nextInt(1, 3),
              random.nextInt(3) == 0 ? Optional.of("b") : Optional.empty(),
              covers(random, 1),
              random.nextInt(4) == 0 ? Map.of("pole", 1L) : Map.of(),
              replaces,
              true));
    }
    List<Required> needs = new ArrayList<>();
    for (String need : NEEDS) {
      boolean pole = need.equals("pole");
      Map<String, Integer> perParty =
          need.equals("light") && random.nextBoolean() ? Map.of("a", 1, "b", 1) : Map.of();
      needs.add(
          new Required(
              need, pole ? 0 : random.nextInt(0, 4), need.equals("pot"), perParty, "test"));
    }
    return new Question(
        candidates,
        needs,
        random.nextBoolean() ? OptionalLong.empty() : OptionalLong.of(random.nextInt(0, 6000)));
  }

  private static Map<String, Long> covers(SplittableRandom random, int least) {
    Map<String, Long> covers = new HashMap<>();
    int number = random.nextInt(least, 3);
    for (int i = 0; i < number; i++) {
      covers.put(NEEDS.get(random.nextInt(NEEDS.size())), (long) random.nextInt(1, 3));
    }
    return covers;
  }
}
