package dev.faircarry.solve;

import dev.faircarry.trip.Rule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Joins contents that must stay together into blocks, and tells alike blocks from others. */
final class BlockBuilder {
  private final ModelBuilder b;
  private final List<Cutting.Cut> cuts;
  private final Carriers carriers;

  BlockBuilder(ModelBuilder builder) {
    this.b = builder;
    cuts = Cutting.of(builder);
    carriers = new Carriers(builder);
  }

  void build() {
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

  /** Groups of contents that together-rules join, in order of their first content. */
  private List<List<Integer>> join() {
    int[] head = new int[cuts.size()];
    Arrays.setAll(head, r -> r);
    for (Rule rule : b.trip.rules()) {
      if (rule instanceof Rule.Together together && b.asks(rule)) {
        int first = -1;
        for (int r = 0; r < head.length; r++) {
          Block.Content content = cuts.get(r).content();
          if (Cutting.anyNames(together.pieces(), content)) {
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
      if (rule instanceof Rule.Apart apart && b.asks(rule)) {
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
      Cutting.Cut cut = cuts.get(r);
      Block.Content content = cut.content();
      contents.add(content);
      neededUntil = Math.max(neededUntil, content.neededUntil());
      for (int d = 0; d < b.days; d++) {
        if (!content.there()[d]) {
          continue;
        }
        if (cut.kind() >= 0) {
          kindVolume[cut.kind()][d] += cut.volume();
          kindCount[cut.kind()][d]++;
        } else {
          volume[d] += cut.volume();
        }
        if (cut.containerKind() >= 0) {
          innerVolume[cut.containerKind()][d] += cut.innerVolume();
          innerCount[cut.containerKind()][d]++;
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
    boolean[][] allowed = carriers.of(contents);
    String signature =
        Arrays.deepToString(
            new Object[] {
              massSince,
              roomMatters() ? volume : new long[0],
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

  /** Whether anybody's pack has a limit on volume. */
  private boolean roomMatters() {
    return Arrays.stream(b.room).anyMatch(room -> room < Model.UNLIMITED);
  }

  /**
   * What tells a content from others beside its numbers: what it covers, as far as a party needs
   * that. Parts of what covers a need count only with their siblings, so they stay what they are.
   */
  private String symmetryMark(Block.Content c) {
    List<String> covers =
        b.trip.shared().get(c.item()).covers().stream().filter(this::needed).toList();
    boolean itself = b.tellApart || (c.isPart() && !covers.isEmpty());
    return c.openDay() + "/" + c.neededUntil() + "/" + covers + (itself ? c.ref().text() : "");
  }

  private boolean needed(String covers) {
    return b.trip.rules().stream()
        .anyMatch(
            rule ->
                rule instanceof Rule.PartyHas has && b.asks(rule) && has.covers().equals(covers));
  }

  private void tag(Rule.Apart apart, int rule, Block.Content content, List<Block.Tag> tags) {
    for (int ref = 0; ref < apart.pieces().size(); ref++) {
      if (Cutting.names(apart.pieces().get(ref), content)) {
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
}
