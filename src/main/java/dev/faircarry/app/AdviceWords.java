package dev.faircarry.app;

import dev.faircarry.split.Advice;
import dev.faircarry.split.Binding;
import dev.faircarry.trip.Trip;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Collectors;

/** Says in words what binds the worst-off morning and what would help. */
public final class AdviceWords {
  private static final BigDecimal MILLIGRAMS_PER_KILOGRAM = BigDecimal.valueOf(1_000_000);

  private final TripNames names;
  private final DemandWords demands;
  private final int grainThousandths;

  public AdviceWords(Trip trip) {
    names = new TripNames(trip);
    demands = new DemandWords(trip);
    grainThousandths = trip.policy().grainThousandths();
  }

  /** What stands under the table of a split: why it is no better, and what would help. */
  public static String text(ExplainTrip.Explained explained) {
    StringBuilder text = new StringBuilder();
    AdviceWords words = new AdviceWords(explained.result().trip());
    explained
        .advice()
        .ifPresent(
            advice -> {
              text.append("\nWhy it is no better\n  ");
              text.append(words.words(advice.binding())).append('\n');
              text.append(advice.lifted().isEmpty() ? "" : "\nWhat would help\n");
              for (Advice.Lifted each : advice.lifted()) {
                text.append("  ").append(words.words(each)).append('\n');
              }
            });
    return text.toString();
  }

  /** {@code own-kit}, {@code sheer-total}, {@code large-piece}, {@code demand}, ... */
  public static String kind(Binding binding) {
    if (binding instanceof Binding.OwnKit) {
      return "own-kit";
    }
    if (binding instanceof Binding.SheerTotal) {
      return "sheer-total";
    }
    if (binding instanceof Binding.LargePiece) {
      return "large-piece";
    }
    if (binding instanceof Binding.OneDemand) {
      return "demand";
    }
    if (binding instanceof Binding.Caps) {
      return "caps";
    }
    return binding instanceof Binding.Unproved ? "unproved" : "grain";
  }

  /** One sentence with names and numbers. */
  public String words(Binding binding) {
    if (binding instanceof Binding.OwnKit kit) {
      return names.hiker(kit.hiker())
          + "’s own kit alone makes "
          + ratio(kit.steps())
          + " of the target on day "
          + kit.day()
          + "; no split can change that.";
    }
    if (binding instanceof Binding.SheerTotal total) {
      return "On day "
          + total.day()
          + " there are "
          + kilograms(total.totalMilligrams(), RoundingMode.HALF_UP)
          + " to share; with every load a step lower there would be room for "
          + kilograms(total.roomMilligrams(), RoundingMode.HALF_UP)
          + " only.";
    }
    if (binding instanceof Binding.LargePiece piece) {
      return "Whoever takes “"
          + piece.pieces().stream().map(names::piece).collect(Collectors.joining("”, “"))
          + "” comes to "
          + ratio(piece.steps())
          + " of the target on day "
          + piece.day()
          + ", even with nothing else.";
    }
    if (binding instanceof Binding.OneDemand one) {
      return "It is this: "
          + demands.words(one.demand())
          + " Without it the worst load would be "
          + ratio(one.worstSteps())
          + " of its target.";
    }
    if (binding instanceof Binding.Caps) {
      return "The caps cannot all hold; passing them by as little as possible comes before the"
          + " ratio.";
    }
    return binding instanceof Binding.Unproved
        ? "It is not proved that it cannot be better; more search steps may find a better split."
        : "No single thing: pieces and rules together do not divide more evenly.";
  }

  /** One sentence on something to leave out. */
  public String words(Advice.Lifted lifted) {
    String what =
        lifted
            .piece()
            .map(piece -> "Without “" + names.piece(piece) + "”")
            .orElseGet(
                () -> "Without the demand “" + demands.words(lifted.demand().orElseThrow()) + "”");
    return what
        + " the worst load would be "
        + ratio(lifted.worstSteps())
        + " of its target"
        + (lifted.proved() ? "." : ", or less.");
  }

  /** Steps as the highest ratio that they stand for, {@code 0.905}. */
  public String ratio(long steps) {
    return BigDecimal.valueOf(Math.multiplyExact(steps, (long) grainThousandths), 3)
        .toPlainString();
  }

  private static String kilograms(long milligrams, RoundingMode rounding) {
    return BigDecimal.valueOf(milligrams)
            .divide(MILLIGRAMS_PER_KILOGRAM, 3, rounding)
            .toPlainString()
        + " kg";
  }
}
