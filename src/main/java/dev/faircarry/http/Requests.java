package dev.faircarry.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.HexFormat;
import java.util.concurrent.ThreadLocalRandom;
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
  private static final long NANOS_PER_MILLI = 1_000_000;

  private final Meters meters;

  Requests(Meters meters) {
    this.meters = meters;
  }

  void install(RoutesConfig routes) {
    routes.before(Requests::begin);
    routes.after(this::end);
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
    Trace.of(ctx)
        .ifPresent(
            trace -> {
              MDC.put("trace", trace.id());
              MDC.put("parent", trace.parent());
            });
  }

  private void end(Context ctx) {
    Long start = ctx.attribute(START_KEY);
    long nanos = start == null ? 0 : System.nanoTime() - start;
    long millis = nanos / NANOS_PER_MILLI;
    String pattern = ctx.attribute(Routes.PATTERN_KEY);
    String route = pattern == null ? "-" : pattern;
    // Whatever else callers write there is theirs and goes nowhere.
    String method = HandlerType.commonHttp().contains(ctx.method()) ? ctx.method().name() : "?";
    meters.request(method, route, ctx.statusCode(), nanos);
    LOG.atInfo()
        .addKeyValue("method", method)
        .addKeyValue("route", route)
        .addKeyValue("status", ctx.statusCode())
        .addKeyValue("millis", millis)
        .log("{} {} {} {} ms", method, route, ctx.statusCode(), millis);
    MDC.remove("request");
    MDC.remove("trace");
    MDC.remove("parent");
  }

  private static String fresh() {
    // It tells requests apart and guards nothing.
    return HexFormat.of().toHexDigits(ThreadLocalRandom.current().nextLong());
  }
}
