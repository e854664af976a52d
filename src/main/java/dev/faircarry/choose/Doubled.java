package dev.faircarry.choose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A need that is met more often than asked, by what is there.
 *
 * @param things refs of what meets it
 * @param canStay those of them that could stay at home, any one of them alone, with every need it
 *     meets still met
 */
public record Doubled(
    String need, long asked, long met, List<String> things, List<String> canStay) {
  public Doubled {
    things = List.copyOf(things);
    canStay = List.copyOf(canStay);
  }

  /** Doubles in kits and shared gear as they are. */
  public static List<Doubled> in(Question question) {
    List<Candidate> there =
        question.candidates().stream().filter(c -> c.kind() != Candidate.Kind.OFFER).toList();
    Map<String, Slack> slacks = new HashMap<>();
    question.needs().forEach(need -> slacks.put(need.need(), new Slack(need, there)));
    List<Doubled> found = new ArrayList<>();
    for (Required need : question.needs()) {
      Slack slack = slacks.getOrDefault(need.need(), new Slack(need, there));
      List<String> things = new ArrayList<>();
      List<String> canStay = new ArrayList<>();
      for (Candidate candidate : there) {
        if (candidate.covers(need.need()) > 0) {
          things.add(candidate.ref());
          boolean spared =
              candidate.covers().keySet().stream()
                  .map(slacks::get)
                  .allMatch(s -> s == null || s.spares(candidate));
          if (candidate.free() && spared) {
            canStay.add(candidate.ref());
          }
        }
      }
      if (need.asks() && slack.met > need.atLeast() && !canStay.isEmpty()) {
        found.add(new Doubled(need.need(), need.atLeast(), slack.met, things, canStay));
      }
    }
    return List.copyOf(found);
  }

  /** How much more of a need there is than asked, in the whole group and for its parties. */
  private static final class Slack {
    private final Required need;
    private final Map<String, Long> own = new HashMap<>();
    private long met;
    private long shared;

    Slack(Required need, List<Candidate> there) {
      this.need = need;
      for (Candidate candidate : there) {
        if (candidate.covers(need.need()) > 0) {
          met += candidate.covers(need.need());
          if (candidate.party().isPresent()) {
            own.merge(candidate.party().get(), 1L, Long::sum);
          } else {
            shared++;
          }
        }
      }
    }

    /** Whether the need is met without this one thing. */
    boolean spares(Candidate gone) {
      long lacking = 0;
      for (Map.Entry<String, Integer> party : need.perParty().entrySet()) {
        long has =
            own.getOrDefault(party.getKey(), 0L)
                - (gone.party().filter(party.getKey()::equals).isPresent() ? 1 : 0);
        lacking += Math.max(0, party.getValue() - has);
      }
      long lent = shared - (gone.party().isPresent() ? 0 : 1);
      return met - gone.covers(need.need()) >= need.atLeast() && lacking <= lent;
    }
  }
}
