package dev.faircarry.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.regex.Pattern;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slf4j.MDC;

/**
 * Gives each request an id and a line in the log. The line has the pattern of the route, not the
 * address: addresses may hold what is private.
 */
final class Requests {
  static final String ID_HEADER = "X-Request-Id";

  private static final Logger LOG = LoggerFactory.getLogger("request");
  private static final Pattern ID = Pattern.compile("[A-Za-z0-9_-]{1,64}");
  private static final String ID_KEY = "request-id";
  private static final String START_KEY = "request-start";
  private static final SecureRandom RANDOM = new SecureRandom();

  private Requests() {}

  static void install(RoutesConfig routes) {
    routes.before(Requests::begin);
    routes.after(Requests::end);
  }

  /** The id of the request, its client's own if that is plain. */
  static String id(Context ctx) {
    String id = ctx.attribute(ID_KEY);
    return id == null ? "unknown" : id;
  }

  private static void begin(Context ctx) {
    String stated = ctx.header(ID_HEADER);
    String id = stated != null && ID.matcher(stated).matches() ? stated : fresh();
    ctx.attribute(ID_KEY, id);
    ctx.attribute(START_KEY, System.nanoTime());
    ctx.header(ID_HEADER, id);
    MDC.put("request", id);
  }

  private static void end(Context ctx) {
    Long start = ctx.attribute(START_KEY);
    long millis = start == null ? 0 : (System.nanoTime() - start) / 1_000_000;
    String route = ctx.attribute(Routes.PATTERN_KEY);
    LOG.info(
        "{} {} {} {} ms",
        ctx.method().isHttpMethod() ? ctx.method().name() : "?",
        route == null ? "-" : route,
        ctx.statusCode(),
        millis);
    MDC.remove("request");
  }

  private static String fresh() {
    byte[] bytes = new byte[8];
    RANDOM.nextBytes(bytes);
    return HexFormat.of().formatHex(bytes);
  }
}
