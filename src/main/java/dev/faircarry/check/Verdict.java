package dev.faircarry.check;

import java.util.ArrayList;
import java.util.List;

/**
 * What an independent reading of trip and split says.
 *
 * @param findings everything found, gravest first
 * @param hikers loads of every hiker, in the trip's order
 * @param steps the steps of all hiker-mornings, from highest to lowest: the list that leximin
 *     compares
 * @param excessThousandths sum over hiker-mornings of what passes the caps
 * @param ownExcessThousandths the part of it that own kit alone already causes
 */
public record Verdict(
    List<Finding> findings,
    List<HikerLoads> hikers,
    List<Long> steps,
    long excessThousandths,
    long ownExcessThousandths) {
  public Verdict {
    findings = List.copyOf(findings);
    hikers = List.copyOf(hikers);
    steps = List.copyOf(steps);
  }

  /** Whether everything is carried once and every hard rule holds. */
  public boolean keepsRules() {
    return findings.stream()
        .noneMatch(f -> f.severity() == Severity.STOP && f.code().breaksSplit());
  }

  /** The same verdict with advice on what was assumed. */
  public Verdict with(List<Finding> assumptions) {
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(assumptions);
    return new Verdict(all, hikers, steps, excessThousandths, ownExcessThousandths);
  }

  /**
   * Which of two verdicts on splits of one trip is fairer: less excess over caps first, then the
   * lexicographically smaller list of steps; less than 0 when this one is.
   */
  public int compareFairness(Verdict other) {
    int order = Long.compare(excessThousandths, other.excessThousandths);
    for (int k = 0; order == 0 && k < Math.min(steps.size(), other.steps.size()); k++) {
      order = Long.compare(steps.get(k), other.steps.get(k));
    }
    return order;
  }

  /** Whether a cap is passed on some morning. */
  public boolean overCap() {
    return excessThousandths > 0;
  }
}
