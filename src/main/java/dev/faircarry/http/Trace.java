package dev.faircarry.http;

import io.javalin.http.Context;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a request comes from in a trace across services (W3C Trace Context, level 1).
 *
 * @param id of the trace, 32 hexadecimal digits
 * @param parent the caller's step in it, 16 hexadecimal digits
 */
record Trace(String id, String parent) {
  private static final Pattern FORM =
      Pattern.compile("([0-9a-f]{2})-([0-9a-f]{32})-([0-9a-f]{16})-[0-9a-f]{2}(-.*)?");

  /** What the caller states; empty if that is nothing, or not valid. */
  static Optional<Trace> of(Context ctx) {
    String stated = ctx.header("traceparent");
    Matcher matcher = FORM.matcher(stated == null ? "" : stated.strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String version = matcher.group(1);
    String id = matcher.group(2);
    String parent = matcher.group(3);
    // Later versions may have more behind the flags; version 00 has not, and ff is none.
    boolean more = version.equals("00") && matcher.group(4) != null;
    boolean nothing = id.equals("0".repeat(32)) || parent.equals("0".repeat(16));
    return version.equals("ff") || more || nothing
        ? Optional.empty()
        : Optional.of(new Trace(id, parent));
  }
}
