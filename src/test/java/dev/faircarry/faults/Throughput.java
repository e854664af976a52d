package dev.faircarry.faults;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.json.TripWriter;
import dev.faircarry.oracle.Family;
import dev.faircarry.oracle.FamilyTrips;
import dev.faircarry.solve.SplitSolver;
import dev.faircarry.solve.Watch;
import dev.faircarry.store.Seal;
import dev.faircarry.store.Stores;
import dev.faircarry.trip.Trip;
import io.javalin.Javalin;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * How many requests a second, side by side in one process and in turns: a stored trip against a
 * bare "hello" on a default server of the same library; splits over HTTP against the engine itself.
 *
 * <p>Arguments: seconds for each turn (3), turns (5), and "reading" or "splitting" for one of the
 * two. The median turn counts.
 */
public final class Throughput {
  private static final int[] CONNECTIONS = {1, 2, 4, 8, 16};
  private static final int TRIPS = 50;
  private static final long EFFORT_STEPS = 20_000_000;
  private static final Watch UNWATCHED = Watch.NONE;

  private final double seconds;
  private final int turns;

  private Throughput(double seconds, int turns) {
    this.seconds = seconds;
    this.turns = turns;
  }

  /** Something that is done again and again, by one of several at once. */
  private interface Work {
    void once() throws Exception;
  }

  private interface Worker {
    Work begin() throws Exception;
  }

  public static void main(String[] args) throws Exception {
    double seconds = args.length > 0 ? Double.parseDouble(args[0]) : 3;
    int turns = args.length > 1 ? Integer.parseInt(args[1]) : 5;
    Path folder = Files.createTempDirectory("throughput");
    Javalin bare =
        Javalin.create(config -> config.routes.get("/hello", ctx -> ctx.result("hello")));
    try (Service service =
        new Service(Stores.sqlite(folder.resolve("trips.db"), Seal.ofKeyset(Seal.newKeyset())))) {
      bare.start("127.0.0.1", 0);
      Throughput throughput = new Throughput(seconds, turns);
      String part = args.length > 2 ? args[2] : "";
      if ("reading".startsWith(part)) {
        throughput.reading(bare.port(), service.port());
      }
      if ("splitting".startsWith(part)) {
        throughput.splitting(service.port());
      }
    } finally {
      bare.stop();
    }
  }

  private void reading(int bare, int service) throws Exception {
    List<Trip> trips = trips();
    byte[] document = TripWriter.write(trips.get(0));
    Request make =
        Request.of("POST", "/v1/trips").json(new String(document, StandardCharsets.UTF_8));
    JsonNode made;
    try (Wire wire = Wire.to(service)) {
      made = Editor.json(wire.send(make.bytes()).read());
    }
    byte[] read =
        Request.of("GET", "/v1/trips/" + made.get("id").asText())
            .bearer(made.get("token").asText())
            .bytes();
    byte[] hello = Request.of("GET", "/hello").bytes();
    System.out.printf(Locale.ROOT, "reading a trip of %d bytes%n", document.length);
    for (int connections : CONNECTIONS) {
      compare(connections, "hello", () -> asking(bare, hello), "trip", () -> asking(service, read));
    }
  }

  private void splitting(int service) throws Exception {
    List<Trip> trips = trips();
    List<byte[]> requests = new ArrayList<>();
    for (Trip trip : trips) {
      String document = new String(TripWriter.write(trip), StandardCharsets.UTF_8);
      requests.add(Request.of("POST", "/v1/splits?effort=" + EFFORT_STEPS).json(document).bytes());
    }
    AtomicInteger next = new AtomicInteger();
    System.out.println("6x20 splits");
    for (int connections : CONNECTIONS) {
      compare(
          connections,
          "engine",
          () ->
              () ->
                  SplitSolver.solve(
                      trips.get(next.getAndIncrement() % TRIPS), EFFORT_STEPS, UNWATCHED),
          "HTTP",
          () -> {
            Wire wire = Wire.to(service);
            return () -> check(wire.send(requests.get(next.getAndIncrement() % TRIPS)).read());
          });
    }
  }

  private static List<Trip> trips() {
    List<Trip> trips = new ArrayList<>();
    for (int seed = 1; seed <= TRIPS; seed++) {
      trips.add(FamilyTrips.trip(seed, Family.plain(6, 20, 5, Family.Hardness.EASY)));
    }
    return trips;
  }

  private static Work asking(int port, byte[] request) throws Exception {
    Wire wire = Wire.to(port);
    byte[] buffer = new byte[65_536];
    return () -> {
      int status = wire.quickly(request, buffer);
      if (status != 200) {
        throw new IllegalStateException(status + " is no answer to count");
      }
    };
  }

  private static void check(Wire.Answer answer) {
    if (answer.status() != 200) {
      throw new IllegalStateException(answer.status() + " " + answer.text());
    }
  }

  private void compare(int atOnce, String one, Worker first, String other, Worker second)
      throws Exception {
    // The first turn of each is for the compiler.
    perSecond(atOnce, first);
    perSecond(atOnce, second);
    double[] ones = new double[turns];
    double[] others = new double[turns];
    for (int turn = 0; turn < turns; turn++) {
      ones[turn] = perSecond(atOnce, first);
      others[turn] = perSecond(atOnce, second);
    }
    Arrays.sort(ones);
    Arrays.sort(others);
    System.out.printf(
        Locale.ROOT,
        "  %2d at once: %s %.0f/s, %s %.0f/s: %.0f %%%n",
        atOnce,
        one,
        ones[turns / 2],
        other,
        others[turns / 2],
        100 * others[turns / 2] / ones[turns / 2]);
  }

  private double perSecond(int atOnce, Worker worker) throws Exception {
    ExecutorService pool = Executors.newFixedThreadPool(atOnce);
    try {
      List<Future<Integer>> counts = new ArrayList<>();
      long begin = System.nanoTime();
      long end = begin + (long) (seconds * 1e9);
      for (int i = 0; i < atOnce; i++) {
        counts.add(
            pool.submit(
                () -> {
                  Work work = worker.begin();
                  int done = 0;
                  while (System.nanoTime() - end < 0) {
                    work.once();
                    done++;
                  }
                  return done;
                }));
      }
      int all = 0;
      for (Future<Integer> count : counts) {
        all += count.get();
      }
      return all / ((System.nanoTime() - begin) / 1e9);
    } finally {
      pool.shutdownNow();
    }
  }
}
