package dev.faircarry.http;

import static io.restassured.RestAssured.given;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.faircarry.Keeping;
import dev.faircarry.Main;
import dev.faircarry.app.Checked;
import dev.faircarry.app.Solver;
import dev.faircarry.app.SplitTrip;
import dev.faircarry.solve.SplitSolver;
import dev.faircarry.store.Seal;
import dev.faircarry.store.Stores;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The service with a real SQLite file, and a client for it. */
public final class KeptService implements AutoCloseable {
  private static final JsonMapper JSON = new JsonMapper();
  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  private final Keeping keeping;
  private final Server server;

  public KeptService(Path directory, Optional<String> creationKey, boolean limited)
      throws IOException {
    this(directory, creationKey, limited, HttpOptions.STANDARD);
  }

  KeptService(Path directory, Optional<String> creationKey, boolean limited, HttpOptions options)
      throws IOException {
    this(directory, creationKey, limited, options, SplitSolver::solve);
  }

  /** With another search behind stored trips. */
  KeptService(
      Path directory,
      Optional<String> creationKey,
      boolean limited,
      HttpOptions options,
      Solver solver)
      throws IOException {
    SplitTrip splitTrip = new SplitTrip(solver, new Checked(), System::nanoTime);
    keeping =
        Keeping.of(
            Stores.sqlite(directory.resolve("trips.db"), Seal.ofKeyset(Seal.newKeyset())),
            splitTrip,
            creationKey);
    KeptParts kept = keeping.parts();
    server =
        Main.server(
            "127.0.0.1",
            0,
            Optional.of(new KeptParts(kept.trips(), kept.wake(), creationKey, limited)),
            options);
  }

  /** An answer. */
  public record Reply(int status, HttpResponse<String> raw) {
    public JsonNode json() {
      try {
        return JSON.readTree(raw.body());
      } catch (IOException e) {
        throw new AssertionError(raw.body(), e);
      }
    }

    public String tag() {
      return raw.headers().firstValue("ETag").orElseThrow();
    }

    public String location() {
      return raw.headers().firstValue("Location").orElseThrow();
    }

    public String body() {
      return raw.body();
    }
  }

  /**
   * Sends a request; headers as name, value, name, value. The answer is held against the contract.
   */
  public Reply send(String method, String path, String token, String body, String... headers) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
            .timeout(Duration.ofSeconds(60))
            .method(
                method,
                body.isEmpty()
                    ? HttpRequest.BodyPublishers.noBody()
                    : HttpRequest.BodyPublishers.ofString(body));
    if (!token.isEmpty()) {
      request.header("Authorization", "Bearer " + token);
    }
    if (!body.isEmpty()) {
      request.header(
          "Content-Type",
          method.equals("PATCH") ? "application/merge-patch+json" : "application/json");
    }
    for (int i = 0; i < headers.length; i += 2) {
      request.setHeader(headers[i], headers[i + 1]);
    }
    try {
      HttpResponse<String> response =
          CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString());
      Map<String, String> asked = new HashMap<>();
      response
          .request()
          .headers()
          .map()
          .forEach((name, values) -> asked.put(name.toLowerCase(Locale.ROOT), values.get(0)));
      Map<String, String> told = new HashMap<>();
      response
          .headers()
          .map()
          .forEach((name, values) -> told.put(name.toLowerCase(Locale.ROOT), values.get(0)));
      Contract.check(
          new Contract.Exchange(
              method,
              response.uri(),
              asked,
              body,
              response.statusCode(),
              told,
              response.body().getBytes(StandardCharsets.UTF_8)));
      return new Reply(response.statusCode(), response);
    } catch (IOException e) {
      throw new AssertionError(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError(e);
    }
  }

  /** The port it listens on. */
  public int port() {
    return server.port();
  }

  /** Every path of the service, and the methods it answers. */
  Map<String, Set<String>> addresses() {
    return server.addresses();
  }

  /** A request whose answer is held against the contract. */
  RequestSpecification request(String token) {
    RequestSpecification request =
        given().baseUri("http://127.0.0.1").port(server.port()).filter(new Contract());
    return token.isEmpty() ? request : request.header("Authorization", "Bearer " + token);
  }

  /** Takes the store away while the service runs. */
  void loseStore() {
    keeping.close();
  }

  /** A stored trip: its address, and the token of its leader's first link. */
  record Stored(String address, String leader) {}

  /** Stores a trip. */
  Stored create(String document) {
    Reply made = expect(send("POST", "/v1/trips", "", document));
    return new Stored(made.location(), made.json().path("token").asText());
  }

  /** Makes a link and gives its token. */
  String link(String trip, String token, String body) {
    return expect(send("POST", trip + "/links", token, body)).json().path("token").asText();
  }

  private static Reply expect(Reply made) {
    if (made.status() != 201) {
      throw new AssertionError(made.status() + " " + made.body());
    }
    return made;
  }

  public Reply get(String path, String token) {
    return send("GET", path, token, "");
  }

  @Override
  public void close() {
    server.close();
    keeping.close();
  }
}
