package dev.faircarry.choose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Whether a choice meets every need, worked out afresh from the question. */
public final class Coverage {
  private Coverage() {}

  /**
   * What a choice leaves unmet; nothing for a good one. Numbers of each candidate, in the
   * question's order.
   */
  public static List<Shortfall> shortfalls(Question question, List<Integer> counts) {
    List<Shortfall> found = new ArrayList<>();
    for (Required need : question.needs()) {
      long asked = need.atLeast();
      long met = 0;
      for (int i = 0; i < counts.size(); i++) {
        Candidate candidate = question.candidates().get(i);
        asked += counts.get(i) * candidate.requires(need.need());
        met += counts.get(i) * candidate.covers(need.need());
      }
      if (met < asked) {
        found.add(new Shortfall(need.need(), Optional.empty(), asked, met));
      }
      found.addAll(partiesWithout(question, counts, need));
    }
    return found;
  }

  /** Whether everything that must come does, and nothing is taken more often than there is. */
  public static boolean inBounds(Question question, List<Integer> counts) {
    for (int i = 0; i < counts.size(); i++) {
      Candidate candidate = question.candidates().get(i);
      int count = counts.get(i);
      if (count < candidate.least() || count > candidate.most()) {
        return false;
      }
      if (!candidate.free()
          && candidate.kind() != Candidate.Kind.OFFER
          && count == 0
          && !replaced(question, counts, candidate)) {
        return false;
      }
    }
    return true;
  }

  private static boolean replaced(Question question, List<Integer> counts, Candidate candidate) {
    for (int i = 0; i < counts.size(); i++) {
      if (counts.get(i) > 0 && question.candidates().get(i).replaces().contains(candidate.ref())) {
        return true;
      }
    }
    return false;
  }

  /**
   * Each party counts its own things; shared gear makes up what they lack, one thing for one party.
   */
  private static List<Shortfall> partiesWithout(
      Question question, List<Integer> counts, Required need) {
    long shared = 0;
    Map<String, Long> own = new TreeMap<>();
    for (int i = 0; i < counts.size(); i++) {
      Candidate candidate = question.candidates().get(i);
      if (candidate.covers(need.need()) > 0) {
        if (candidate.party().isPresent()) {
          own.merge(candidate.party().orElseThrow(), (long) counts.get(i), Long::sum);
        } else {
          shared += counts.get(i);
        }
      }
    }
    List<Shortfall> found = new ArrayList<>();
    for (Map.Entry<String, Integer> party : new TreeMap<>(need.perParty()).entrySet()) {
      long has = own.getOrDefault(party.getKey(), 0L);
      long lacks = Math.max(0, party.getValue() - has);
      if (lacks > shared) {
        found.add(
            new Shortfall(
                need.need(), Optional.of(party.getKey()), party.getValue(), has + shared));
        shared = 0;
      } else {
        shared -= lacks;
      }
    }
    return found;
  }
}
