package dev.faircarry.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The addresses of the service. Each path answers HEAD where it answers GET, OPTIONS always, and
 * any other method with 405 and the Allow header, so that no resource has to think of it.
 */
final class Routes {
  static final String PATTERN_KEY = "route-pattern";

  private final Map<String, Map<HandlerType, Handler>> paths = new LinkedHashMap<>();

  /** A resource: adds the addresses it answers. */
  @FunctionalInterface
  interface Resource {
    void register(Routes routes);
  }

  Routes get(String path, Handler handler) {
    return on(HandlerType.GET, path, handler);
  }

  Routes post(String path, Handler handler) {
    return on(HandlerType.POST, path, handler);
  }

  Routes put(String path, Handler handler) {
    return on(HandlerType.PUT, path, handler);
  }

  Routes patch(String path, Handler handler) {
    return on(HandlerType.PATCH, path, handler);
  }

  Routes delete(String path, Handler handler) {
    return on(HandlerType.DELETE, path, handler);
  }

  /** Every path, and the methods it was given. */
  Map<String, Set<String>> addresses() {
    Map<String, Set<String>> addresses = new LinkedHashMap<>();
    paths.forEach(
        (path, methods) -> {
          Set<String> names = new TreeSet<>();
          methods.keySet().forEach(method -> names.add(method.name()));
          addresses.put(path, names);
        });
    return addresses;
  }

  private Routes on(HandlerType method, String path, Handler handler) {
    if (paths.computeIfAbsent(path, p -> new LinkedHashMap<>()).put(method, handler) != null) {
      throw new IllegalArgumentException(method + " " + path + " stands twice");
    }
    return this;
  }

  /**
   * Makes all of them answer.
   *
   * @param cors has its say in what OPTIONS answers
   */
  void install(RoutesConfig routes, Cors cors) {
    routes.before(Routes::requireKnownMethod);
    paths.forEach((path, methods) -> install(routes, path, methods, cors));
  }

  /** RFC 9110, section 9.1: a method nobody here has heard of is answered with 501. */
  private static void requireKnownMethod(Context ctx) {
    if (!HandlerType.commonHttp().contains(ctx.method())) {
      throw new ProblemException(
          ProblemCode.METHOD_UNKNOWN, "No address of this service answers that method.");
    }
  }

  private static void install(
      RoutesConfig routes, String path, Map<HandlerType, Handler> methods, Cors cors) {
    Map<HandlerType, Handler> all = new LinkedHashMap<>(methods);
    if (methods.containsKey(HandlerType.GET)) {
      // Jetty sends the headers, its length among them, and holds the body back.
      all.put(HandlerType.HEAD, methods.get(HandlerType.GET));
    }
    TreeSet<String> names = new TreeSet<>();
    all.keySet().forEach(method -> names.add(method.name()));
    names.add(HandlerType.OPTIONS.name());
    String allow = String.join(", ", names);
    all.put(
        HandlerType.OPTIONS,
        ctx -> {
          ctx.header("Allow", allow).status(204);
          cors.preflight(ctx, allow);
        });
    for (HandlerType method : HandlerType.commonHttp()) {
      Handler handler =
          all.getOrDefault(
              method,
              ctx -> {
                throw new ProblemException(
                        ProblemCode.METHOD_NOT_ALLOWED, "This address answers " + allow + ".")
                    .with("Allow", allow);
              });
      routes.addHttpHandler(
          method,
          path,
          ctx -> {
            ctx.attribute(PATTERN_KEY, path);
            handler.handle(ctx);
          });
    }
  }
}
