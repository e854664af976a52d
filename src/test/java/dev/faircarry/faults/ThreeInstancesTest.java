package dev.faircarry.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Three processes of the program on one PostgreSQL database share many solves; one is killed in
 * mid-solve, another is stopped in mid-solve. Every solve is completed once.
 */
@Tag("slow")
class ThreeInstancesTest {
  private static final int SHORT = 40;

  /** As long as a search may be; no machine ends this one before its clock does. */
  private static final String LONG_TRIP = "demo-data/many-hands.json";

  private static final String LONG_EFFORT = "500000000";
  private static final String SHORT_TRIP = "demo-data/whole-things.json";
  private static final String SHORT_EFFORT = "20000";

  @TempDir Path folder;
  private PostgresServer server;
  private Connection database;
  private final List<Program> programs = new ArrayList<>();

  /** A trip that is kept, and what was asked for it. */
  private record Kept(String path, String token, List<String> solves) {
    Request request(String method, String below) {
      return Request.of(method, path + below).bearer(token);
    }
  }

  @BeforeEach
  void begin() throws Exception {
    server = new PostgresServer(folder);
    String url = server.newDatabase("trips");
    for (int i = 1; i <= 3; i++) {
      programs.add(Program.start(Program.Setup.postgres(folder, url), "instance" + i));
    }
    database = server.connect("trips");
    try (Statement statement = database.createStatement()) {
      statement.execute("CREATE TABLE completed (job text)");
      statement.execute(
          "CREATE FUNCTION note() RETURNS trigger LANGUAGE plpgsql AS"
              + " 'BEGIN INSERT INTO completed VALUES (NEW.id); RETURN NEW; END'");
      statement.execute(
          "CREATE TRIGGER note AFTER UPDATE ON jobs FOR EACH ROW WHEN (NEW.state = 'DONE')"
              + " EXECUTE FUNCTION note()");
    }
  }

  @AfterEach
  void end() throws Exception {
    programs.forEach(Program::close);
    database.close();
    server.close();
  }

  @Test
  void killedAndStoppedInstancesLoseNothing() throws Exception {
    Kept hard = keep(0, LONG_TRIP);
    for (int i = 0; i < 3; i++) {
      ask(i, hard, LONG_EFFORT);
    }
    Patience.until("all three are solving", () -> number(RUNNING) == 3);
    Kept easy = keep(1, SHORT_TRIP);
    for (int i = 0; i < SHORT; i++) {
      ask(i % 3, easy, SHORT_EFFORT);
    }
    programs.get(2).kill();
    for (String solve : hard.solves()) {
      stop(0, hard, solve);
    }
    everythingIsCompletedOnce(0, hard, easy);
    assertEquals(1, number("SELECT count(*) FROM jobs WHERE attempt > 1"), "taken over");

    Kept other = keep(0, LONG_TRIP);
    ask(0, other, LONG_EFFORT);
    ask(1, other, LONG_EFFORT);
    Patience.until("both are solving", () -> number(RUNNING) == 2);
    programs.get(1).stop();
    // The first one is at work, so nobody has taken yet what the second gave back.
    assertEquals(
        1,
        number(
            "SELECT count(*) FROM jobs WHERE state = 'WAITING' AND attempt = 1"
                + " AND instance IS NULL AND lease_until IS NULL"),
        "handed back");
    for (String solve : other.solves()) {
      stop(0, other, solve);
    }
    everythingIsCompletedOnce(0, other, easy);
    assertEquals(2, number("SELECT count(*) FROM jobs WHERE attempt > 1"), "handed back");
  }

  private static final String RUNNING =
      "SELECT count(DISTINCT instance) FROM jobs WHERE state = 'RUNNING'";

  private Kept keep(int program, String document) throws IOException {
    Request request = Request.of("POST", "/v1/trips").json(Files.readString(Path.of(document)));
    Wire.Answer made = answer(program, request);
    assertEquals(201, made.status(), made::text);
    JsonNode body = Editor.json(made);
    return new Kept(
        "/v1/trips/" + body.get("id").asText(), body.get("token").asText(), new ArrayList<>());
  }

  private void ask(int program, Kept trip, String effort) throws IOException {
    Request request =
        trip.request("POST", "/splits?effort=" + effort).with("Prefer", "respond-async");
    Wire.Answer asked = answer(program, request);
    assertEquals(202, asked.status(), asked::text);
    trip.solves().add(Editor.json(asked).get("id").asText());
  }

  private void stop(int program, Kept trip, String solve) throws IOException {
    Wire.Answer stopped = answer(program, trip.request("POST", "/solves/" + solve + "/stop"));
    assertEquals(202, stopped.status(), stopped::text);
  }

  private void everythingIsCompletedOnce(int program, Kept... trips) throws Exception {
    Patience.until(
        "all solves are over",
        () -> number("SELECT count(*) FROM jobs WHERE state IN ('WAITING', 'RUNNING')") == 0);
    assertEquals(0, number("SELECT count(*) FROM jobs WHERE state <> 'DONE'"));
    assertEquals(number("SELECT count(*) FROM jobs"), number("SELECT count(*) FROM completed"));
    assertEquals(
        number("SELECT count(*) FROM jobs"), number("SELECT count(DISTINCT job) FROM completed"));
    for (Kept trip : trips) {
      assertTrue(!trip.solves().isEmpty());
      for (String solve : trip.solves()) {
        Wire.Answer split = answer(program, trip.request("GET", "/splits/" + solve));
        assertEquals(200, split.status(), split::text);
      }
    }
  }

  private Wire.Answer answer(int program, Request request) throws IOException {
    try (Wire wire = Wire.to(programs.get(program).port())) {
      return wire.send(request.bytes()).read();
    }
  }

  private int number(String query) throws SQLException {
    try (Statement statement = database.createStatement();
        ResultSet row = statement.executeQuery(query)) {
      row.next();
      return row.getInt(1);
    }
  }
}
