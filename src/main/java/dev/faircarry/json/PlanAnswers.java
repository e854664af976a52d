package dev.faircarry.json;

import dev.faircarry.app.Cautions;
import dev.faircarry.app.ChooseGear;
import dev.faircarry.app.Judge;
import dev.faircarry.check.Verdict;
import dev.faircarry.kit.EffortReport;
import dev.faircarry.kit.KitReport;
import dev.faircarry.kit.LoadPlot;
import dev.faircarry.kit.MakeupPlot;
import dev.faircarry.provision.Provision;
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

  /** Most search steps a choice may ask for. */
  public static final long MAX_CHOICE_STEPS = 5_000_000;

  /** Pictures are small: they show the first of the cautions, documents all. */
  private static final String CAUTION = Cautions.TEXT.get(0);

  private static final Split NOTHING_SHARED = new Split(List.of(), List.of(), List.of());

  private final ChooseGear gear;
  private final Judge judge;

  public PlanAnswers(ChooseGear gear, Judge judge) {
    this.gear = gear;
    this.judge = judge;
  }

  /**
   * An answer, for people and for machines.
   *
   * @param value what was found
   * @param body the same as a document
   */
  public record Answered<T>(T value, byte[] body) {}

  /** Food, fuel and water of a trip document. */
  public Reading<Answered<Provision>> provisions(byte[] tripDocument) {
    return TripReader.read(tripDocument)
        .map(
            trip -> {
              Provision provision = Provisions.of(trip);
              return new Answered<>(provision, ProvisionWriter.write(trip, provision));
            });
  }

  /** Kits and loads of a trip, with a split if there is one. */
  public Reading<Answered<KitReport>> kitReport(Reading<LookReader.Look> asked) {
    return asked.map(
        look -> {
          KitReport report = report(look);
          return new Answered<>(report, KitReportWriter.write(report));
        });
  }

  /** Loads against targets, morning by morning, as an SVG document. */
  public Reading<byte[]> loadPlot(Reading<LookReader.Look> asked) {
    return asked.map(look -> utf8(LoadPlot.of(look.trip(), verdict(look), CAUTION)));
  }

  /** What each load is made of, as an SVG document. */
  public Reading<byte[]> makeupPlot(Reading<LookReader.Look> asked) {
    return asked.map(look -> utf8(MakeupPlot.of(look.trip(), report(look), CAUTION)));
  }

  /** What walking the route costs. */
  public Reading<Answered<EffortReport>> efforts(Reading<LookReader.Look> asked) {
    return asked.map(
        look -> {
          EffortReport report =
              EffortReport.of(look.trip(), verdict(look), look.walkingTime(), look.cost());
          return new Answered<>(report, EffortWriter.write(report));
        });
  }

  /**
   * What to take.
   *
   * @param splitSteps search steps for each of the two splits, if the document asks for them
   * @param outOfTime asked often, whether to stop with what is proved by then
   */
  public Reading<Answered<ChooseGear.Found>> choice(
      Reading<LookReader.Look> asked,
      long effortSteps,
      long splitSteps,
      BooleanSupplier outOfTime) {
    return asked.map(
        look -> {
          ChooseGear.Found found =
              gear.choose(look.trip(), effortSteps, look.withSplits() ? splitSteps : 0, outOfTime);
          return new Answered<>(found, ChoiceWriter.write(found));
        });
  }

  private KitReport report(LookReader.Look look) {
    return KitReport.of(look.trip(), split(look), verdict(look));
  }

  private Verdict verdict(LookReader.Look look) {
    return judge.verdict(look.trip(), split(look));
  }

  private Split split(LookReader.Look look) {
    return look.split()
        .map(split -> judge.completed(look.trip(), split).split())
        .orElse(NOTHING_SHARED);
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
