package dev.faircarry.solve;

import dev.faircarry.split.Carry;
import dev.faircarry.split.CurvePoint;
import dev.faircarry.split.Handover;
import dev.faircarry.split.Proof;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeSet;

/** Writes a point of a curve: the split, its proof, and who gives what to whom. */
final class PointOf {
  private PointOf() {}

  static CurvePoint write(Model m, Moves moves, Split earlier, BudgetSearch search, Effort effort) {
    State state = search.state();
    Split split = SplitOf.write(m, state.holder);
    int levels = m.mornings();
    Proof proof =
        new Proof(
            levels,
            search.provedLevels(),
            0,
            search.provedLevels() < levels
                ? OptionalLong.of(search.boundSteps())
                : OptionalLong.empty(),
            search.excessProved(),
            effort.spent(),
            effort.cutByClock());
    List<Handover> list = handovers(earlier, split);
    TreeSet<String> people = new TreeSet<>();
    long moved = 0;
    for (Handover handover : list) {
      people.add(handover.from());
      people.add(handover.to());
      moved += handover.units() * massOf(m, handover.piece());
    }
    int count = list.stream().mapToInt(Handover::units).sum();
    if (count != moves.count(state)) {
      throw new IllegalStateException("handovers are counted in two ways that differ");
    }
    return new CurvePoint(
        count,
        split,
        proof,
        list,
        Arrays.stream(state.list()).mapToObj(s -> (long) s).toList(),
        state.totalExcess,
        moved,
        people.size());
  }

  private static long massOf(Model m, PieceRef piece) {
    for (Block block : m.blocks) {
      for (Block.Content content : block.contents()) {
        if (content.ref().equals(piece)) {
          return content.mass()[0];
        }
      }
    }
    return 0;
  }

  /**
   * Matches what some have fewer of with what others have more of, in order of the splits; what is
   * new comes from nobody.
   */
  static List<Handover> handovers(Split before, Split after) {
    Map<PieceRef, Map<String, Integer>> change = new LinkedHashMap<>();
    for (Carry carry : after.carries()) {
      change
          .computeIfAbsent(carry.piece(), p -> new LinkedHashMap<>())
          .merge(carry.hiker(), carry.units(), Integer::sum);
    }
    for (Carry carry : before.carries()) {
      Map<String, Integer> of = change.get(carry.piece());
      if (of != null) {
        of.merge(carry.hiker(), -carry.units(), Integer::sum);
      }
    }
    List<Handover> list = new ArrayList<>();
    change.forEach((piece, of) -> match(piece, of, list));
    return list;
  }

  private static void match(PieceRef piece, Map<String, Integer> change, List<Handover> list) {
    List<String> givers = new ArrayList<>();
    change.forEach(
        (hiker, units) -> {
          for (int u = units; u < 0; u++) {
            givers.add(hiker);
          }
        });
    for (Map.Entry<String, Integer> entry : change.entrySet()) {
      int wanted = entry.getValue();
      while (wanted > 0 && !givers.isEmpty()) {
        String giver = givers.get(0);
        int units = 0;
        while (wanted > 0 && !givers.isEmpty() && givers.get(0).equals(giver)) {
          givers.remove(0);
          units++;
          wanted--;
        }
        list.add(new Handover(giver, entry.getKey(), piece, units));
      }
    }
  }
}
