package dev.faircarry.check;

import dev.faircarry.split.Split;
import java.util.List;

/**
 * A split with what it left open filled in.
 *
 * @param assumptions what was filled in, as advice; empty when nothing was
 */
public record Completed(Split split, List<Finding> assumptions) {
  public Completed {
    assumptions = List.copyOf(assumptions);
  }
}
