package dev.faircarry.solve;

import dev.faircarry.split.CampHandover;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Opened;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Turns a state into a split, units of one item counted together. */
final class SplitOf {
  private final Model m;
  private final int[][] holder;

  private SplitOf(Model m, int[][] holder) {
    this.m = m;
    this.holder = holder;
  }

  static Split write(Model m, int[][] holder) {
    return new SplitOf(m, holder).write();
  }

  private record Hand(int afterDay, int from, int to, PieceRef piece) {}

  private record Held(int hiker, int item, PieceRef piece) {}

  private record Day(int day, int item, int hiker) {}

  private Split write() {
    Map<Held, Integer> held = new LinkedHashMap<>();
    Map<Day, Integer> opened = new LinkedHashMap<>();
    Map<Hand, Integer> handed = new LinkedHashMap<>();
    for (Block block : m.blocks) {
      int[] route = holder[block.index()];
      for (Block.Content content : block.contents()) {
        held.merge(new Held(route[0], content.item(), content.ref()), 1, Integer::sum);
        if (content.openDay() != Block.Content.NEVER) {
          int by = route[m.stageOfDay[content.openDay() - 1]];
          opened.merge(new Day(content.openDay(), content.item(), by), 1, Integer::sum);
        }
        for (int s = 1; s < m.stages; s++) {
          if (content.neededUntil() >= m.stageStart[s] && route[s] != route[s - 1]) {
            Hand hand = new Hand(m.stageStart[s], route[s - 1], route[s], content.ref());
            handed.merge(hand, 1, Integer::sum);
          }
        }
      }
    }
    List<Carry> carries = new ArrayList<>();
    held.entrySet().stream()
        .sorted(
            (x, y) -> {
              int byHiker = Integer.compare(x.getKey().hiker(), y.getKey().hiker());
              return byHiker != 0 ? byHiker : Integer.compare(x.getKey().item(), y.getKey().item());
            })
        .forEach(
            e -> carries.add(new Carry(id(e.getKey().hiker()), e.getKey().piece(), e.getValue())));
    List<Opened> plan = new ArrayList<>();
    opened.entrySet().stream()
        .sorted(
            (x, y) -> {
              int byDay = Integer.compare(x.getKey().day(), y.getKey().day());
              int byItem = Integer.compare(x.getKey().item(), y.getKey().item());
              int byHiker = Integer.compare(x.getKey().hiker(), y.getKey().hiker());
              return byDay != 0 ? byDay : byItem != 0 ? byItem : byHiker;
            })
        .forEach(
            e ->
                plan.add(
                    new Opened(
                        e.getKey().day(),
                        m.trip.shared().get(e.getKey().item()).id(),
                        id(e.getKey().hiker()),
                        e.getValue())));
    List<CampHandover> camp = new ArrayList<>();
    handed.entrySet().stream()
        .sorted((x, y) -> Integer.compare(x.getKey().afterDay(), y.getKey().afterDay()))
        .forEach(
            e ->
                camp.add(
                    new CampHandover(
                        e.getKey().afterDay(),
                        id(e.getKey().from()),
                        id(e.getKey().to()),
                        e.getKey().piece(),
                        e.getValue())));
    return new Split(carries, plan, camp);
  }

  private String id(int hiker) {
    return m.trip.hikers().get(hiker).id();
  }
}
