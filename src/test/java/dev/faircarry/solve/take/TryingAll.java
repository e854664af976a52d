package dev.faircarry.solve.take;

import dev.faircarry.choose.Candidate;
import dev.faircarry.choose.Question;
import dev.faircarry.choose.Required;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * The frontier by trying every choice. It reads the question by itself and shares nothing with what
 * it checks.
 */
final class TryingAll {
  private TryingAll() {}

  /** Price to the least mass for that much or less money, only where more money helps. */
  static NavigableMap<Long, Long> frontier(Question question) {
    NavigableMap<Long, Long> best = new TreeMap<>();
    walk(question, new ArrayList<>(), best);
    NavigableMap<Long, Long> frontier = new TreeMap<>();
    long lightest = Long.MAX_VALUE;
    for (Map.Entry<Long, Long> entry : best.entrySet()) {
      if (entry.getValue() < lightest) {
        lightest = entry.getValue();
        frontier.put(entry.getKey(), lightest);
      }
    }
    return frontier;
  }

  private static void walk(Question question, List<Integer> counts, Map<Long, Long> best) {
    if (counts.size() < question.candidates().size()) {
      Candidate next = question.candidates().get(counts.size());
      for (int count = next.least(); count <= next.most(); count++) {
        counts.add(count);
        walk(question, counts, best);
        counts.remove(counts.size() - 1);
      }
      return;
    }
    if (good(question, counts)) {
      long mass = 0;
      long price = 0;
      for (int i = 0; i < counts.size(); i++) {
        mass += counts.get(i) * question.candidates().get(i).massMilligrams();
        price += counts.get(i) * question.candidates().get(i).priceHundredths();
      }
      best.merge(price, mass, Math::min);
    }
  }

  static boolean good(Question question, List<Integer> counts) {
    List<Candidate> candidates = question.candidates();
    for (Candidate candidate : candidates) {
      boolean there = candidate.kind() != Candidate.Kind.OFFER;
      if (there && !candidate.free() && counts.get(candidates.indexOf(candidate)) == 0) {
        boolean stoodIn = false;
        for (int j = 0; j < counts.size(); j++) {
          stoodIn |= counts.get(j) > 0 && candidates.get(j).replaces().contains(candidate.ref());
        }
        if (!stoodIn) {
          return false;
        }
      }
    }
    for (Required need : question.needs()) {
      long balance = -need.atLeast();
      long lacking = 0;
      long shared = 0;
      for (int i = 0; i < counts.size(); i++) {
        Candidate c = candidates.get(i);
        balance +=
            counts.get(i)
                * (c.covers().getOrDefault(need.need(), 0L)
                    - c.requires().getOrDefault(need.need(), 0L));
        if (c.covers().containsKey(need.need()) && c.party().isEmpty()) {
          shared += counts.get(i);
        }
      }
      for (Map.Entry<String, Integer> party : need.perParty().entrySet()) {
        long own = 0;
        for (int i = 0; i < counts.size(); i++) {
          Candidate c = candidates.get(i);
          if (c.covers().containsKey(need.need())
              && c.party().filter(party.getKey()::equals).isPresent()) {
            own += counts.get(i);
          }
        }
        lacking += Math.max(0, party.getValue() - own);
      }
      if (balance < 0 || lacking > shared) {
        return false;
      }
    }
    return true;
  }
}
