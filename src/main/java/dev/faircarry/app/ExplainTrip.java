package dev.faircarry.app;

import dev.faircarry.solve.Watch;
import dev.faircarry.split.Advice;
import dev.faircarry.split.Binding;
import dev.faircarry.trip.Trip;
import java.util.Optional;
import java.util.function.LongSupplier;

/** Splits a trip and says why its worst-off morning is no better, and what would help. */
public final class ExplainTrip {
  private final SplitTrip splitTrip;
  private final Adviser adviser;
  private final LongSupplier nanoTime;

  /**
   * @param nanoTime the safety clock, as {@code System.nanoTime} counts
   */
  public ExplainTrip(SplitTrip splitTrip, Adviser adviser, LongSupplier nanoTime) {
    this.splitTrip = splitTrip;
    this.adviser = adviser;
    this.nanoTime = nanoTime;
  }

  /**
   * An explanation.
   *
   * @param advice there when a split was found; a result without one explains itself
   */
  public record Explained(SplitResult result, Optional<Advice> advice) {}

  /**
   * Splits and explains.
   *
   * @param effortSteps search steps for the split, and as many again for the questions
   */
  public Explained explain(Trip trip, long effortSteps) {
    SplitResult result = splitTrip.split(trip, effortSteps);
    if (!(result instanceof SplitResult.Found found) || found.verdict().steps().isEmpty()) {
      return new Explained(result, Optional.empty());
    }
    Watch clock = new Deadline(nanoTime, ServiceLimits.CLOCK_SECONDS, Watch.NONE);
    long worst = found.verdict().steps().get(0);
    Advice advice = adviser.advise(trip, worst, effortSteps, clock);
    return new Explained(result, Optional.of(advice.boundBy(binding(found, advice.binding()))));
  }

  /** What masses alone prove stands; what was found by asking is worth as much as the split. */
  private static Binding binding(SplitResult.Found found, Binding asked) {
    boolean byAsking = asked instanceof Binding.Grain || asked instanceof Binding.OneDemand;
    if (byAsking && found.verdict().overCap()) {
      return new Binding.Caps();
    }
    if (asked instanceof Binding.Grain && found.proof().provedLevels() == 0) {
      return new Binding.Unproved();
    }
    return asked;
  }
}
