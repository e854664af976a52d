package dev.faircarry.http;

import io.javalin.http.Context;
import java.util.Enumeration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Picks the kind of answer a client accepts (RFC 9110, section 12.5.1). */
final class Accepting {
  static final String JSON = "application/json";
  static final String HTML = "text/html";
  static final String CSV = "text/csv";

  private Accepting() {}

  /** Ends the request with 406 when the client does not accept JSON. */
  static void json(Context ctx) {
    oneOf(ctx, List.of(JSON));
  }

  /**
   * The offered kind the client likes best; the first of equals.
   *
   * @param offered media types, the service's own favourite first
   */
  static String oneOf(Context ctx, List<String> offered) {
    StringBuilder all = new StringBuilder();
    for (Enumeration<String> e = ctx.req().getHeaders("Accept"); e.hasMoreElements(); ) {
      all.append(all.isEmpty() ? "" : ",").append(e.nextElement());
    }
    return best(all.toString(), offered)
        .orElseThrow(
            () ->
                new ProblemException(
                    ProblemCode.NOT_ACCEPTABLE,
                    "The answer can be " + String.join(" or ", offered) + "."));
  }

  static Optional<String> best(String accept, List<String> offered) {
    if (accept.isBlank()) {
      return Optional.of(offered.get(0));
    }
    String best = "";
    int bestQuality = 0;
    for (String kind : offered) {
      int quality = quality(accept, kind);
      if (quality > bestQuality) {
        best = kind;
        bestQuality = quality;
      }
    }
    return bestQuality == 0 ? Optional.empty() : Optional.of(best);
  }

  /** Quality in thousandths of the most specific range that matches; 0 when none does. */
  private static int quality(String accept, String kind) {
    int specific = -1;
    int quality = 0;
    for (String part : accept.split(",", -1)) {
      String[] pieces = part.split(";", -1);
      String range = pieces[0].strip().toLowerCase(Locale.ROOT);
      int rank = rank(range, kind);
      if (rank > specific) {
        specific = rank;
        quality = quality(pieces);
      }
    }
    return quality;
  }

  private static int rank(String range, String kind) {
    if (range.equals(kind)) {
      return 2;
    }
    if (range.equals(kind.substring(0, kind.indexOf('/')) + "/*")) {
      return 1;
    }
    return range.equals("*/*") ? 0 : -1;
  }

  private static int quality(String[] pieces) {
    for (String piece : pieces) {
      String parameter = piece.strip().toLowerCase(Locale.ROOT);
      if (parameter.startsWith("q=")) {
        return thousandths(parameter.substring(2).strip());
      }
    }
    return 1000;
  }

  /** RFC 9110: 0 to 1 with at most three decimals; anything else counts as 1. */
  private static int thousandths(String number) {
    if (!number.matches("0(\\.[0-9]{0,3})?|1(\\.0{0,3})?")) {
      return 1000;
    }
    String decimals = number.length() > 2 ? number.substring(2) : "";
    return number.charAt(0) == '1' ? 1000 : Integer.parseInt((decimals + "000").substring(0, 3));
  }
}
