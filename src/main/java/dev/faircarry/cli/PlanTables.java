package dev.faircarry.cli;

import dev.faircarry.app.Cautions;
import dev.faircarry.app.ChooseGear;
import dev.faircarry.choose.Answer;
import dev.faircarry.choose.Changes;
import dev.faircarry.choose.Doubled;
import dev.faircarry.choose.Point;
import dev.faircarry.choose.Question;
import dev.faircarry.choose.Shortfall;
import dev.faircarry.choose.Swap;
import dev.faircarry.effort.DayEffort;
import dev.faircarry.kit.Carried;
import dev.faircarry.kit.Drift;
import dev.faircarry.kit.EffortReport;
import dev.faircarry.kit.Goal;
import dev.faircarry.kit.KitOf;
import dev.faircarry.kit.KitReport;
import dev.faircarry.kit.Share;
import dev.faircarry.kit.StowAdvice;
import dev.faircarry.kit.Weights;
import dev.faircarry.provision.Figure;
import dev.faircarry.provision.Provision;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.LongFunction;
import java.util.stream.Collectors;

/** Answers about the rest of a trip as a person reads them in a terminal. */
final class PlanTables {
  private final LongFunction<String> mass;

  /**
   * @param mass how milligrams are written: kilograms, or pounds and ounces
   */
  PlanTables(LongFunction<String> mass) {
    this.mass = mass;
  }

  /** Food, fuel and water. */
  String provision(Provision provision) {
    StringBuilder out = new StringBuilder();
    for (Provision.Item item : provision.items()) {
      line(out, "%s: %s", item.name(), item.reason());
      if (!item.followsParty()) {
        line(out, "    Ask again when somebody drops out.");
      }
    }
    line(out, "");
    line(out, "Worked out from:");
    for (Figure figure : provision.figures()) {
      line(
          out,
          "  %-28s %10s %-8s %s",
          figure.name(),
          figure.amount().toPlainString(),
          figure.unit(),
          figure.source());
    }
    provision.notes().forEach(note -> line(out, "Note: %s %s", note.message(), note.remedy()));
    return out.toString();
  }

  /** Kits and loads. */
  String kit(KitReport report) {
    StringBuilder out = new StringBuilder();
    report.hikers().forEach(kit -> kit(out, kit));
    kit(out, report.group());
    cautions(out);
    return out.toString();
  }

  private void kit(StringBuilder out, KitOf kit) {
    line(out, "%s", kit.hiker().orElse("The group"));
    line(
        out,
        "  %-4s %14s %14s %14s %14s %14s",
        "day",
        "base",
        "consumables",
        "total pack",
        "worn",
        "skin-out");
    for (Weights w : kit.mornings()) {
      line(
          out,
          "  %-4d %14s %14s %14s %14s %14s",
          w.day(),
          mass.apply(w.baseMilligrams()),
          mass.apply(w.consumablesMilligrams()),
          mass.apply(w.packMilligrams()),
          mass.apply(w.wornMilligrams()),
          mass.apply(w.skinOutMilligrams()));
    }
    line(out, "  for what:  %s", shares(kit.byPurpose()));
    line(out, "  where:     %s", shares(kit.byPlace()));
    line(
        out,
        "  heaviest:  %s",
        kit.heaviest().stream()
            .map((Carried c) -> c.name() + " " + mass.apply(c.massMilligrams()))
            .collect(Collectors.joining(", ")));
    for (Drift drift : kit.drifts()) {
      line(
          out,
          "  claimed %s, weighs %s: %s",
          mass.apply(drift.labelMilligrams()),
          mass.apply(drift.scaleMilligrams()),
          drift.name());
    }
    line(
        out,
        "  cost %s, %d things without one; never weighed: %s",
        money(kit.costHundredths()),
        kit.costUnknown(),
        mass.apply(kit.claimedOnlyMilligrams()));
    goal(out, "base weight", kit.baseGoal(), mass);
    goal(out, "cost", kit.spendingGoal(), PlanTables::money);
    for (StowAdvice advice : kit.advice()) {
      line(out, "  %s: better %s. %s", advice.name(), word(advice.better()), advice.reason());
    }
    line(out, "");
  }

  private static void goal(
      StringBuilder out, String what, Optional<Goal> goal, LongFunction<String> text) {
    if (goal.isPresent()) {
      Goal g = goal.get();
      line(
          out,
          g.distance() > 0 ? "  %s: goal %s, %s still to go" : "  %s: goal %s reached, by %s",
          what,
          text.apply(g.goal()),
          text.apply(Math.abs(g.distance())));
    }
  }

  private String shares(List<Share> shares) {
    return shares.stream()
        .map(s -> s.name() + " " + mass.apply(s.massMilligrams()))
        .collect(Collectors.joining(", "));
  }

  /** What walking costs. */
  String effort(EffortReport report) {
    StringBuilder out = new StringBuilder();
    line(out, "Walking time: %s", report.rule().source());
    line(out, "Cost: %s", report.model().source());
    line(out, "      %s; nothing is said outside.", report.model().range());
    for (EffortReport.OfHiker hiker : report.hikers()) {
      line(out, "%s", hiker.hiker());
      for (DayEffort day : hiker.days()) {
        line(
            out,
            "  day %-3d %2d:%02d h  %s",
            day.day(),
            day.minutes() / 60,
            day.minutes() % 60,
            day.kilocalories().isPresent()
                ? day.kilocalories().getAsLong() + " kcal"
                : day.refused().map(r -> r.meaning()).orElse(""));
      }
    }
    cautions(out);
    return out.toString();
  }

  /** What to take. */
  String choice(ChooseGear.Found found) {
    StringBuilder out = new StringBuilder();
    for (Doubled doubled : found.doubles()) {
      line(
          out,
          "%s is met %d times, asked %d: one of %s can stay.",
          doubled.need(),
          doubled.met(),
          doubled.asked(),
          String.join(", ", doubled.canStay()));
    }
    if (found.answer() instanceof Answer.Choices choices) {
      choices(out, found.question(), choices);
    } else if (found.answer() instanceof Answer.Unmeetable unmeetable) {
      line(out, "No choice meets the needs: %s.", String.join(", ", unmeetable.needs()));
      for (Shortfall s : unmeetable.shortfalls()) {
        line(out, "  %s: asked %d, at most %d.", s.need(), s.asked(), s.met());
      }
    } else if (found.answer() instanceof Answer.TooLarge large) {
      line(out, "%d things to choose among; at most %d.", large.candidates(), large.most());
    } else {
      line(out, "The effort ended before a choice was found.");
    }
    found
        .effect()
        .ifPresent(
            e -> {
              line(out, "%s", effect(e));
              cautions(out);
            });
    return out.toString();
  }

  private void choices(StringBuilder out, Question question, Answer.Choices choices) {
    line(out, "%14s %10s  %s", "mass", "money", "change");
    for (Point point : choices.frontier()) {
      boolean chosen = choices.chosen().equals(Optional.of(point));
      line(
          out,
          "%14s %10s%s %s",
          mass.apply(point.massMilligrams()),
          money(point.priceHundredths()),
          chosen ? " >" : "  ",
          changes(Changes.of(question, point)));
    }
    line(
        out,
        choices.complete()
            ? "Proved: no other choice is lighter for the same money."
            : "The effort ended; there may be more.");
    if (choices.chosen().isEmpty()) {
      line(out, "The budget lies below the cheapest of them.");
    }
    for (Swap swap : choices.swaps()) {
      line(
          out,
          "Buying %s saves %s for %s.",
          swap.offer(),
          mass.apply(swap.savedMilligrams()),
          money(swap.costHundredths()));
    }
  }

  private static String changes(Changes changes) {
    String bought =
        changes.bought().stream()
            .map(c -> c.count() == 1 ? c.offer() : c.count() + " " + c.offer())
            .collect(Collectors.joining(", "));
    String brought =
        changes.brought().stream().map(Changes.Counted::offer).collect(Collectors.joining(", "));
    return (bought.isEmpty() ? "" : "buy " + bought + "; ")
        + (brought.isEmpty() ? "" : "bring " + brought + "; ")
        + (changes.leftAtHome().isEmpty()
            ? "leave nothing"
            : "leave " + String.join(", ", changes.leftAtHome()));
  }

  private static String effect(ChooseGear.Effect effect) {
    return "Worst load against target: "
        + side(effect.before())
        + " before, "
        + side(effect.after())
        + " after.";
  }

  private static String side(ChooseGear.Side side) {
    return side.worst()
        .map(
            w -> {
              long ratio = ChooseGear.ratioThousandths(w);
              return String.format(Locale.ROOT, "%d.%03d", ratio / 1000, ratio % 1000);
            })
        .orElse(side.kind().name().toLowerCase(Locale.ROOT));
  }

  private static String word(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String money(long hundredths) {
    return String.format(Locale.ROOT, "%d.%02d", hundredths / 100, hundredths % 100);
  }

  private static void cautions(StringBuilder out) {
    line(out, "");
    Cautions.TEXT.forEach(caution -> line(out, "%s", caution));
  }

  private static void line(StringBuilder out, String format, Object... values) {
    out.append(String.format(Locale.ROOT, format, values).stripTrailing()).append('\n');
  }
}
