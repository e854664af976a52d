package dev.faircarry.choose;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What a choice changes about what is there.
 *
 * @param bought offers with a price
 * @param brought offers somebody owns already
 * @param leftAtHome things of the trip
 * @param swapped which of what is new stands in for which of what is left
 */
public record Changes(
    List<Counted> bought, List<Counted> brought, List<String> leftAtHome, List<Pair> swapped) {
  public Changes {
    bought = List.copyOf(bought);
    brought = List.copyOf(brought);
    leftAtHome = List.copyOf(leftAtHome);
    swapped = List.copyOf(swapped);
  }

  /** So many of an offer. */
  public record Counted(String offer, int count) {}

  /** One thing in place of another: it replaces it by name, or meets a need the other met. */
  public record Pair(String in, String out) {}

  /** Compares a choice with what is there. */
  public static Changes of(Question question, Point point) {
    List<Counted> bought = new ArrayList<>();
    List<Counted> brought = new ArrayList<>();
    List<String> left = new ArrayList<>();
    List<Candidate> in = new ArrayList<>();
    List<Candidate> out = new ArrayList<>();
    for (int i = 0; i < question.candidates().size(); i++) {
      Candidate candidate = question.candidates().get(i);
      int count = point.counts().get(i);
      if (candidate.kind() == Candidate.Kind.OFFER && count > 0) {
        (candidate.priceHundredths() > 0 ? bought : brought)
            .add(new Counted(candidate.ref(), count));
        in.add(candidate);
      } else if (candidate.kind() != Candidate.Kind.OFFER && count == 0) {
        left.add(candidate.ref());
        out.add(candidate);
      }
    }
    List<Pair> pairs = new ArrayList<>();
    for (Candidate gone : out) {
      for (Candidate come : in) {
        Set<String> common = new LinkedHashSet<>(come.covers().keySet());
        common.retainAll(gone.covers().keySet());
        if (come.replaces().contains(gone.ref()) || !common.isEmpty()) {
          pairs.add(new Pair(come.ref(), gone.ref()));
        }
      }
    }
    return new Changes(bought, brought, left, pairs);
  }
}
