package dev.faircarry.choose;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A need that is met more often than asked, by what is there.
 *
 * @param things refs of what meets it
 * @param canStay those of them that could stay at home, any one of them alone, with every need
 *     still met
 */
public record Doubled(
    String need, long asked, long met, List<String> things, List<String> canStay) {
  public Doubled {
    things = List.copyOf(things);
    canStay = List.copyOf(canStay);
  }

  /** Doubles in kits and shared gear as they are. */
  public static List<Doubled> in(Question question) {
    List<Doubled> found = new ArrayList<>();
    List<Integer> present = question.present();
    List<Shortfall> now = Coverage.shortfalls(question, present);
    for (Required need : question.needs()) {
      long met = 0;
      List<String> things = new ArrayList<>();
      List<String> canStay = new ArrayList<>();
      for (int i = 0; i < present.size(); i++) {
        Candidate candidate = question.candidates().get(i);
        if (present.get(i) == 0 || candidate.covers(need.need()) == 0) {
          continue;
        }
        met += candidate.covers(need.need());
        things.add(candidate.ref());
        List<Integer> without = new ArrayList<>(present);
        without.set(i, 0);
        if (candidate.free() && now.containsAll(Coverage.shortfalls(question, without))) {
          canStay.add(candidate.ref());
        }
      }
      if (met > need.atLeast() && !canStay.isEmpty() && need.asks()) {
        found.add(new Doubled(need.need(), need.atLeast(), met, things, canStay));
      }
    }
    return Collections.unmodifiableList(found);
  }
}
