package dev.faircarry.http;

import dev.faircarry.app.CannotListen;
import dev.faircarry.app.CheckDeparture;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.app.SolvePool;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.util.JavalinBindException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.eclipse.jetty.server.handler.EagerContentHandler;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** The HTTP service, from start to stop. */
public final class Server implements AutoCloseable {
  private final Javalin javalin;
  private final Routes routes = new Routes();
  private final Meters meters = new Meters();
  private final SolvePool pool;
  private final Optional<KeptRoutes> kept;
  private volatile boolean ready;

  /**
   * Starts listening; port 0 takes any free one.
   *
   * @throws CannotListen when the port is taken or the host is not this machine
   */
  public Server(Parts parts, String host, int port) {
    this.pool = parts.pool();
    this.kept = parts.kept().map(k -> new KeptRoutes(k, parts, meters));
    this.javalin = Javalin.create(config -> configure(config, parts));
    try {
      javalin.start(host, port);
    } catch (JavalinBindException e) {
      pool.close();
      meters.close();
      throw new CannotListen(e);
    }
    ready = true;
  }

  /**
   * Loads what every server is made of, and keeps nothing. Called while the store opens, it makes
   * the time from start to first answer shorter; without it everything works the same.
   */
  public static void loadAhead() {
    new Meters().close();
    Javalin.create(
        config -> {
          config.startup.showJavalinBanner = false;
          config.startup.showOldJavalinVersionWarning = false;
          config.startup.startupWatcherEnabled = false;
          config.jetty.threadPool = threads();
          new GracefulHandler(new WholeAnswers(eager()));
        });
  }

  /** The port that is listened on. */
  public int port() {
    return javalin.port();
  }

  /** Every path of the service, and the methods it answers beside HEAD and OPTIONS. */
  Map<String, Set<String>> addresses() {
    return routes.addresses();
  }

  /** Takes nothing new, lets what runs end within {@code ServiceLimits.STOP_SECONDS}. */
  @Override
  public void close() {
    ready = false;
    kept.ifPresent(KeptRoutes::close);
    javalin.stop();
    pool.close();
    meters.close();
  }

  private boolean takesWork() {
    return ready && kept.map(KeptRoutes::ready).orElse(true);
  }

  /** All resources of the service; a new one is added here. */
  private List<Routes.Resource> resources(Parts parts) {
    List<Routes.Resource> all = new ArrayList<>();
    all.add(
        new SplitRoutes(parts.splitTrip(), parts.judgeSplit(), parts.explainTrip(), parts.pool()));
    all.add(
        new ChangeRoutes(parts.rebalance(), new CheckDeparture(parts.splitTrip()), parts.pool()));
    all.add(new PlanRoutes(parts.planAnswers(), parts.pool()));
    all.add(new TableRoutes());
    kept.ifPresent(all::add);
    parts.kept().map(k -> new CardRoutes(k.trips(), parts)).ifPresent(all::add);
    all.add(new IssueCodeRoutes());
    all.add(new HealthRoutes(this::takesWork));
    if (parts.options().metrics()) {
      meters.solves(parts.splitTrip().counts());
      meters.pool(parts.pool());
      meters.process();
      all.add(new MetricsRoutes(meters));
    }
    all.add(new PageRoutes(parts.docsVersion(), new PageFiles(parts.templatesVersion())));
    return all;
  }

  private void configure(JavalinConfig config, Parts parts) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.http.defaultContentType = "text/plain; charset=utf-8";
    config.router.ignoreTrailingSlashes = false;
    config.jetty.threadPool = threads();
    config.jetty.modifyServer(
        server -> {
          server.setHandler(new GracefulHandler(new WholeAnswers(eager())));
          server.setErrorHandler(new RefusedEarly());
          server.setStopTimeout(ServiceLimits.STOP_SECONDS * 1000L);
        });
    config.jetty.modifyHttpConfiguration(
        http -> {
          http.setSendServerVersion(false);
          http.setRequestHeaderSize(ServiceLimits.REQUEST_HEADER_BYTES);
          http.setIdleTimeout(ServiceLimits.IDLE_SECONDS * 1000L);
        });
    new Requests(meters).install(config.routes);
    SecurityHeaders.install(config.routes);
    Cors cors = new Cors(parts.options().corsOrigins());
    cors.install(config.routes);
    Problems.install(config.routes);
    kept.ifPresent(k -> k.install(config.routes));
    resources(parts).forEach(resource -> resource.register(routes));
    routes.install(config.routes, cors);
  }

  /** Takes in bodies before a thread is given to the request, so that slow senders hold none. */
  private static EagerContentHandler eager() {
    return new EagerContentHandler(
        new EagerContentHandler.RetainedContentLoaderFactory(
            ServiceLimits.EAGER_BYTES, ServiceLimits.EAGER_BYTES_PER_READ, false));
  }

  private static QueuedThreadPool threads() {
    QueuedThreadPool threads = new QueuedThreadPool(ServiceLimits.REQUEST_THREADS);
    threads.setName("http");
    return threads;
  }
}
