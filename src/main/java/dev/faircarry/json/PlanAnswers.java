package dev.faircarry.json;

import dev.faircarry.app.Checker;
import dev.faircarry.app.ChooseGear;
import dev.faircarry.check.Verdict;
import dev.faircarry.kit.EffortReport;
import dev.faircarry.kit.KitReport;
import dev.faircarry.kit.LoadPlot;
import dev.faircarry.kit.MakeupPlot;
import dev.faircarry.provision.Provisions;
import dev.faircarry.split.Split;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * What can be asked about the rest of a trip, document in, document out: the same for HTTP and the
 * command line. Nothing of it is stored.
 */
public final class PlanAnswers {
  /** Search steps of a choice unless stated otherwise. */
  public static final long CHOICE_STEPS = 100_000;

  private static final Split NOTHING_SHARED = new Split(List.of(), List.of(), List.of());

  private final ChooseGear gear;
  private final Checker checker;

  public PlanAnswers(ChooseGear gear, Checker checker) {
    this.gear = gear;
    this.checker = checker;
  }

  /**
   * A choice and what came of it.
   *
   * @param outcome {@code chosen}, {@code over-budget}, {@code unmeetable} or {@code undecided}
   * @param complete whether it is proved
   */
  public record Choice(byte[] body, String outcome, boolean complete) {}

  /** Food, fuel and water of a trip document. */
  public Reading<byte[]> provisions(byte[] tripDocument) {
    return TripReader.read(tripDocument)
        .map(trip -> ProvisionWriter.write(trip, Provisions.of(trip)));
  }

  /** Kits and loads of a trip, with a split if there is one. */
  public Reading<byte[]> kitReport(byte[] document) {
    return LookReader.read(document).map(look -> KitReportWriter.write(report(look)));
  }

  /** Loads against targets, morning by morning, as an SVG document. */
  public Reading<byte[]> loadPlot(byte[] document) {
    return LookReader.read(document).map(look -> utf8(LoadPlot.of(look.trip(), verdict(look))));
  }

  /** What each load is made of, as an SVG document. */
  public Reading<byte[]> makeupPlot(byte[] document) {
    return LookReader.read(document).map(look -> utf8(MakeupPlot.of(look.trip(), report(look))));
  }

  /** What walking the route costs. */
  public Reading<byte[]> efforts(byte[] document) {
    return LookReader.read(document)
        .map(
            look ->
                EffortWriter.write(
                    EffortReport.of(look.trip(), verdict(look), look.walkingTime(), look.cost())));
  }

  /**
   * What to take.
   *
   * @param splitSteps search steps for each of the two splits, if the document asks for them
   * @param outOfTime asked often, whether to stop with what is proved by then
   */
  public Reading<Choice> choice(
      byte[] document, long effortSteps, long splitSteps, BooleanSupplier outOfTime) {
    return LookReader.read(document)
        .map(
            look -> {
              ChooseGear.Found found =
                  gear.choose(
                      look.trip(), effortSteps, look.withSplits() ? splitSteps : 0, outOfTime);
              return new Choice(
                  ChoiceWriter.write(found),
                  ChoiceWriter.outcome(found.answer()),
                  ChoiceWriter.complete(found.answer()));
            });
  }

  private KitReport report(LookReader.Look look) {
    return KitReport.of(look.trip(), look.split().orElse(NOTHING_SHARED), verdict(look));
  }

  private Verdict verdict(LookReader.Look look) {
    return checker.check(look.trip(), look.split().orElse(NOTHING_SHARED));
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
