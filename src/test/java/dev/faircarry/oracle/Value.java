package dev.faircarry.oracle;

import java.util.List;

/** How fair a split is: less excess first, then the lexicographically smaller list. */
public record Value(long excess, List<Long> steps) implements Comparable<Value> {
  public Value {
    steps = List.copyOf(steps);
  }

  @Override
  public int compareTo(Value other) {
    if (excess != other.excess) {
      return Long.compare(excess, other.excess);
    }
    for (int k = 0; k < steps.size(); k++) {
      int level = Long.compare(steps.get(k), other.steps.get(k));
      if (level != 0) {
        return level;
      }
    }
    return 0;
  }
}
