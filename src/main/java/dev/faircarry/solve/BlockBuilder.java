package dev.faircarry.solve;

import dev.faircarry.split.Demand;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Use;
import dev.faircarry.unit.Volume;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Cuts shared items into contents, joins what must stay together, and finds who may hold each
 * block.
 */
final class BlockBuilder {
  private final ModelBuilder b;
  private final List<Raw> raws = new ArrayList<>();

  BlockBuilder(ModelBuilder builder) {
    this.b = builder;
  }

  /** A content with what the block needs to know of it. */
  private record Raw(
      Block.Content content,
      long volume,
      int kind,
      int containerKind,
      long innerVolume,
      SharedItem item) {}

  void build() {
    for (int k = 0; k < b.trip.shared().size(); k++) {
      cut(k, b.trip.shared().get(k));
    }
    b.leftOut.ifPresent(piece -> raws.removeIf(raw -> raw.content().ref().equals(piece)));
    List<List<Integer>> groups = join();
    List<Rule.Apart> aparts = apartRules();
    b.apartRules = aparts.size();
    Map<String, Integer> classes = new HashMap<>();
    List<Block> blocks = new ArrayList<>();
    for (List<Integer> group : groups) {
      blocks.add(block(blocks.size(), group, aparts, classes));
    }
    b.blocks = blocks;
  }

  private void cut(int k, SharedItem item) {
    item.form()
        .match(
            new Form.Cases<Boolean>() {
              @Override
              public Boolean whole(Form.Whole form) {
                Optional<Use> use = form.use().map(u -> (Use) u);
                int inner = form.contains().map(c -> b.kind(c.kind())).orElse(-1);
                long innerVolume = form.contains().map(c -> c.volume().milliliters()).orElse(0L);
                return raws.add(
                    raw(
                        k,
                        item,
                        PieceRef.item(item.id()),
                        false,
                        form.mass().milligrams(),
                        use,
                        0,
                        form.volume(),
                        form.stow(),
                        inner,
                        innerVolume));
              }

              @Override
              public Boolean parts(Form.Parts form) {
                b.partsOfItem[k] = form.parts().size();
                for (Form.Part part : form.parts()) {
                  raws.add(
                      raw(
                          k,
                          item,
                          PieceRef.part(item.id(), part.id()),
                          true,
                          part.mass().milligrams(),
                          Optional.empty(),
                          0,
                          part.volume(),
                          part.stow(),
                          -1,
                          0));
                }
                return true;
              }

              @Override
              public Boolean counted(Form.Counted form) {
                cutUnits(k, item, form);
                return true;
              }
            });
  }

  private void cutUnits(int k, SharedItem item, Form.Counted form) {
    int[] perDay = new int[b.days];
    int count;
    if (form.quantity() instanceof Form.Quantity.Fixed fixed) {
      count = fixed.count();
    } else {
      int each = ((Form.Quantity.PerPerson) form.quantity()).countPerDay();
      count = 0;
      for (int d = 0; d < b.days; d++) {
        perDay[d] = each * people(d);
        count += perDay[d];
      }
      if (!item.onDays().isEmpty()) {
        count = perDay[item.onDays().get(0) - 1];
      }
    }
    if (form.use().isPresent() && form.use().get() instanceof Use.UnitsPerDay use) {
      if (use.perDay() instanceof Use.PerDay.Same same) {
        Arrays.fill(perDay, same.units());
      } else if (use.perDay() instanceof Use.PerDay.Listed listed) {
        Arrays.setAll(perDay, d -> listed.units().get(d));
      }
      int left = count;
      for (int d = 0; d < b.days; d++) {
        int used = Math.min(perDay[d], left);
        left -= used;
        addUnits(k, item, form, used, d + 1);
      }
      addUnits(k, item, form, left, Block.Content.NEVER);
      return;
    }
    addUnits(k, item, form, count, 0);
  }

  private int people(int day) {
    int sum = 0;
    for (int last : b.lastDay) {
      sum += day <= last ? 1 : 0;
    }
    return sum;
  }

  private void addUnits(int k, SharedItem item, Form.Counted form, int count, int openDay) {
    for (int u = 0; u < count; u++) {
      raws.add(
          raw(
              k,
              item,
              PieceRef.item(item.id()),
              false,
              form.unitMass().milligrams(),
              form.use(),
              openDay,
              form.unitVolume(),
              form.stow(),
              -1,
              0));
    }
  }

  /**
   * @param openDay 0 for what is not used by units, else the day (from 1) on which the unit is used
   */
  private Raw raw(
      int k,
      SharedItem item,
      PieceRef ref,
      boolean isPart,
      long unitMass,
      Optional<Use> use,
      int openDay,
      Optional<Volume> volume,
      Stow stow,
      int containerKind,
      long innerVolume) {
    long[] mass = new long[b.days];
    boolean[] there = new boolean[b.days];
    int neededUntil = 0;
    for (int d = 0; d < b.days; d++) {
      boolean used = openDay > 0 && d + 1 > openDay;
      there[d] = item.thereOn(d + 1) && !used;
      if (used) {
        mass[d] = ((Use.UnitsPerDay) use.orElseThrow()).leaves().milligrams();
      } else if (there[d]) {
        mass[d] = unitMass;
        if (use.isPresent() && use.get() instanceof Use.Evenly evenly) {
          mass[d] = ModelBuilder.usedEvenly(unitMass, evenly.leaves().milligrams(), d, b.days);
        }
      }
      if (there[d]) {
        neededUntil = d;
      }
    }
    int kind = item.goesInto().map(b::kind).orElse(-1);
    // What goes into a container takes no room in the pack, whether or not containers are asked
    // for.
    boolean inPack = stow != Stow.OUTSIDE && item.goesInto().isEmpty();
    long taken = inPack ? volume.map(Volume::milliliters).orElse(0L) : 0;
    if (kind >= 0) {
      taken = volume.map(Volume::milliliters).orElse(0L);
    }
    Block.Content content =
        new Block.Content(
            ref, k, isPart, openDay == 0 ? Block.Content.NEVER : openDay, mass, there, neededUntil);
    return new Raw(content, taken, kind, containerKind, innerVolume, item);
  }

  /** Whether a reference of a rule names the content. */
  static boolean names(PieceRef reference, Block.Content content) {
    return reference.part().isPresent()
        ? reference.equals(content.ref())
        : reference.item().equals(content.ref().item());
  }

  private boolean asked(Rule rule) {
    return b.active.test(new Demand.OfRule(rule.id()));
  }

  /** Groups of contents that together-rules join, in order of their first content. */
  private List<List<Integer>> join() {
    int[] head = new int[raws.size()];
    Arrays.setAll(head, r -> r);
    for (Rule rule : b.trip.rules()) {
      if (rule instanceof Rule.Together together && asked(rule)) {
        int first = -1;
        for (int r = 0; r < head.length; r++) {
          Block.Content content = raws.get(r).content();
          if (together.pieces().stream().anyMatch(ref -> names(ref, content))) {
            if (first < 0) {
              first = r;
            }
            int from = head[r];
            int to = head[first];
            int least = Math.min(from, to);
            for (int x = 0; x < head.length; x++) {
              if (head[x] == from || head[x] == to) {
                head[x] = least;
              }
            }
          }
        }
      }
    }
    List<List<Integer>> groups = new ArrayList<>();
    for (int r = 0; r < head.length; r++) {
      if (head[r] == r) {
        List<Integer> group = new ArrayList<>();
        for (int x = r; x < head.length; x++) {
          if (head[x] == r) {
            group.add(x);
          }
        }
        groups.add(group);
      }
    }
    return groups;
  }

  private List<Rule.Apart> apartRules() {
    List<Rule.Apart> found = new ArrayList<>();
    for (Rule rule : b.trip.rules()) {
      if (rule instanceof Rule.Apart apart && asked(rule)) {
        found.add(apart);
      }
    }
    return found;
  }

  private Block block(
      int index, List<Integer> group, List<Rule.Apart> aparts, Map<String, Integer> classes) {
    int kinds = b.kinds.size();
    List<Block.Content> contents = new ArrayList<>();
    long[] volume = new long[b.days];
    long[][] kindVolume = new long[kinds][b.days];
    int[][] kindCount = new int[kinds][b.days];
    long[][] innerVolume = new long[kinds][b.days];
    int[][] innerCount = new int[kinds][b.days];
    int neededUntil = 0;
    List<Block.Tag> tags = new ArrayList<>();
    for (int r : group) {
      Raw raw = raws.get(r);
      Block.Content content = raw.content();
      contents.add(content);
      neededUntil = Math.max(neededUntil, content.neededUntil());
      for (int d = 0; d < b.days; d++) {
        if (!content.there()[d]) {
          continue;
        }
        if (raw.kind() >= 0) {
          kindVolume[raw.kind()][d] += raw.volume();
          kindCount[raw.kind()][d]++;
        } else {
          volume[d] += raw.volume();
        }
        if (raw.containerKind() >= 0) {
          innerVolume[raw.containerKind()][d] += raw.innerVolume();
          innerCount[raw.containerKind()][d]++;
        }
      }
      for (int rule = 0; rule < aparts.size(); rule++) {
        tag(aparts.get(rule), rule, content, tags);
      }
    }
    long[][] massSince = new long[b.stageStart.length][b.days];
    for (int s = 0; s < massSince.length; s++) {
      for (Block.Content content : contents) {
        if (content.neededUntil() >= b.stageStart[s]) {
          for (int d = b.stageStart[s]; d < b.days; d++) {
            massSince[s][d] += content.mass()[d];
          }
        }
      }
    }
    boolean[][] allowed = allowed(contents);
    String signature =
        Arrays.deepToString(
            new Object[] {
              massSince,
              volume,
              kindVolume,
              kindCount,
              innerVolume,
              innerCount,
              allowed,
              tags.toString(),
              contents.stream().map(c -> symmetryMark(c)).toList(),
              neededUntil
            });
    int symmetryClass = classes.computeIfAbsent(signature, s -> classes.size());
    return new Block(
        index,
        symmetryClass,
        List.copyOf(contents),
        massSince,
        volume,
        kindVolume,
        kindCount,
        innerVolume,
        innerCount,
        neededUntil,
        allowed,
        List.copyOf(tags));
  }

  /** Parts are never exchanged for other things: they count only with their siblings. */
  private String symmetryMark(Block.Content c) {
    String covers = b.trip.shared().get(c.item()).covers().toString();
    return c.openDay()
        + "/"
        + c.neededUntil()
        + "/"
        + covers
        + (c.isPart() || b.tellApart ? c.ref().text() : "");
  }

  private void tag(Rule.Apart apart, int rule, Block.Content content, List<Block.Tag> tags) {
    for (int ref = 0; ref < apart.pieces().size(); ref++) {
      if (names(apart.pieces().get(ref), content)) {
        for (Block.Tag other : tags) {
          b.contradictory |= other.rule() == rule && other.ref() != ref;
        }
        Block.Tag tag = new Block.Tag(rule, ref, content.neededUntil());
        if (!tags.contains(tag)) {
          tags.add(tag);
        }
      }
    }
  }

  private boolean[][] allowed(List<Block.Content> contents) {
    boolean[][] allowed = new boolean[b.stageStart.length][b.hikers];
    for (int s = 0; s < allowed.length; s++) {
      int from = b.stageStart[s];
      boolean needed = contents.stream().anyMatch(c -> c.neededUntil() >= from);
      for (int i = 0; i < b.hikers && needed; i++) {
        allowed[s][i] = b.lastDay[i] >= from;
      }
      for (Block.Content content : contents) {
        if (s == 0) {
          freeze(allowed[0], content);
        }
        if (content.neededUntil() >= from) {
          narrow(allowed[s], content, from);
        }
      }
    }
    return allowed;
  }

  /** Of units used by the day only the number stays, see {@link NeedBuilder}. */
  private void freeze(boolean[] who, Block.Content content) {
    Deque<Integer> holders = b.frozen.get(content.ref());
    if (holders != null && !holders.isEmpty() && !NeedBuilder.usedByDay(b.trip, content.item())) {
      int holder = holders.remove();
      for (int i = 0; i < who.length; i++) {
        who[i] &= i == holder;
      }
    }
  }

  private void narrow(boolean[] who, Block.Content content, int from) {
    for (Rule rule : b.trip.rules()) {
      if (!asked(rule)) {
        continue;
      }
      if (rule instanceof Rule.Pinned pinned && named(pinned.pieces(), content)) {
        keep(who, List.of(pinned.hiker()), from);
      } else if (rule instanceof Rule.Only only && named(only.pieces(), content)) {
        keep(who, only.hikers(), from);
      } else if (rule instanceof Rule.Barred barred && named(barred.pieces(), content)) {
        for (int i = 0; i < b.hikers; i++) {
          who[i] &= !barred.hikers().contains(b.trip.hikers().get(i).id());
        }
      }
    }
    List<String> covers = b.trip.shared().get(content.item()).covers();
    if (!b.trip.policy().minorsMayCarryFlameAndFuel()
        && (covers.contains("flame") || covers.contains("fuel"))) {
      for (int i = 0; i < b.hikers; i++) {
        var hiker = b.trip.hikers().get(i);
        who[i] &= !(hiker.minor() && b.active.test(new Demand.OfMinor(hiker.id())));
      }
    }
  }

  private static boolean named(List<PieceRef> references, Block.Content content) {
    return references.stream().anyMatch(ref -> names(ref, content));
  }

  /** The rule binds while one of its hikers is on the trip. */
  private void keep(boolean[] who, List<String> ids, int from) {
    boolean bound = false;
    for (int i = 0; i < b.hikers; i++) {
      bound |= ids.contains(b.trip.hikers().get(i).id()) && b.lastDay[i] >= from;
    }
    for (int i = 0; bound && i < b.hikers; i++) {
      who[i] &= ids.contains(b.trip.hikers().get(i).id());
    }
  }
}
