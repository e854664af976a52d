package dev.faircarry.http;

import dev.faircarry.app.ServiceLimits;
import io.javalin.http.Context;
import java.util.List;
import java.util.Set;

/**
 * Reads the query of an address. What is not known is refused: it would be passed over silently.
 */
final class Parameters {
  private static final int DIGITS = 18;

  private Parameters() {}

  /** Ends the request when the query has other parameters than these, or one twice. */
  static void known(Context ctx, String... names) {
    Set<String> known = Set.of(names);
    ctx.queryParamMap()
        .forEach(
            (name, values) -> {
              if (!known.contains(name)) {
                throw bad(
                    known.isEmpty()
                        ? "This address takes no parameters."
                        : "This address knows only " + String.join(", ", known) + ".");
              }
              if (values.size() != 1) {
                throw bad("The parameter " + name + " stands more than once.");
              }
            });
  }

  /** Search steps to spend: {@code effort}, or the default. */
  static long effortSteps(Context ctx) {
    known(ctx, "effort");
    return whole(
        ctx,
        "effort",
        ServiceLimits.DEFAULT_EFFORT_STEPS,
        ServiceLimits.MIN_EFFORT_STEPS,
        ServiceLimits.MAX_EFFORT_STEPS);
  }

  /** One of these words, the first of them when it is absent. */
  static String word(Context ctx, String name, List<String> words) {
    List<String> values = ctx.queryParams(name);
    if (values.isEmpty()) {
      return words.get(0);
    }
    if (words.contains(values.get(0))) {
      return values.get(0);
    }
    throw bad("The parameter " + name + " is one of " + String.join(", ", words) + ".");
  }

  /** A whole number within its limits, or what stands for it when it is absent. */
  static long whole(Context ctx, String name, long absent, long least, long most) {
    List<String> values = ctx.queryParams(name);
    if (values.isEmpty()) {
      return absent;
    }
    String text = values.get(0);
    if (text.matches("[0-9]{1," + DIGITS + "}")) {
      long number = Long.parseLong(text);
      if (number >= least && number <= most) {
        return number;
      }
    }
    throw bad("The parameter " + name + " is a whole number from " + least + " to " + most + ".");
  }

  private static ProblemException bad(String detail) {
    return new ProblemException(ProblemCode.INVALID_PARAMETER, detail);
  }
}
