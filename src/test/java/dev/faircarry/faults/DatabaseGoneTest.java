package dev.faircarry.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The database server goes while people write, and comes back; the service runs on. */
@Tag("slow")
class DatabaseGoneTest {
  private static final int EDITORS = 4;
  private static final int ENOUGH = 200;
  private static final long PATIENCE_SECONDS = 120;

  @TempDir Path folder;
  private PostgresServer server;
  private Program program;

  private interface Ending {
    void end() throws Exception;
  }

  @BeforeEach
  void begin() throws Exception {
    server = new PostgresServer(folder);
    program = Program.start(Program.Setup.postgres(folder, server.newDatabase("trips")));
  }

  @AfterEach
  void end() throws Exception {
    program.close();
    server.close();
  }

  @Test
  void stoppedServerIsTolerated() throws Exception {
    goneAndBack(server::stop);
  }

  @Test
  void killedServerLosesNothingAcknowledged() throws Exception {
    goneAndBack(server::kill);
  }

  private void goneAndBack(Ending ending) throws Exception {
    List<Editor> editors = new ArrayList<>();
    for (int i = 0; i < EDITORS; i++) {
      editors.add(Editor.begin("127.0.0." + (11 + i), program.port(), "trip " + i));
    }
    writeUntilGone(editors, ending);
    assertEquals(503, ready().status());
    assertEquals(200, get("/health/live").status());
    refused(editors.get(0), editors.get(0).request("GET", ""));
    refused(editors.get(1), editors.get(1).change("while it is away"));
    server.startAgain();
    Patience.until("ready again", () -> ready().status() == 200);
    for (Editor editor : editors) {
      editor.verify(program.port(), 1);
      try (Wire wire = editor.connect(program.port())) {
        assertEquals(200, editor.change(wire, "afterwards").status());
      }
      editor.verify(program.port(), editor.acknowledged());
    }
  }

  private void writeUntilGone(List<Editor> editors, Ending ending) throws Exception {
    CountDownLatch left = new CountDownLatch(ENOUGH);
    ExecutorService pool = Executors.newFixedThreadPool(editors.size());
    try {
      List<Future<Wire.Answer>> writing = new ArrayList<>();
      for (Editor editor : editors) {
        writing.add(pool.submit(() -> write(editor, left)));
      }
      assertTrue(left.await(PATIENCE_SECONDS, TimeUnit.SECONDS), "the service writes too slowly");
      ending.end();
      for (Future<Wire.Answer> each : writing) {
        unavailable(each.get(PATIENCE_SECONDS, TimeUnit.SECONDS));
      }
    } finally {
      pool.shutdownNow();
    }
  }

  /** The first answer that does not say that the change was kept. */
  private Wire.Answer write(Editor editor, CountDownLatch left) throws IOException {
    try (Wire wire = editor.connect(program.port())) {
      while (true) {
        Wire.Answer answer = editor.change(wire, "write " + editor.acknowledged());
        if (answer.status() != 200) {
          return answer;
        }
        left.countDown();
      }
    }
  }

  private void refused(Editor editor, Request request) throws IOException {
    try (Wire wire = editor.connect(program.port())) {
      unavailable(wire.send(request.bytes()).read());
    }
  }

  private static void unavailable(Wire.Answer answer) throws IOException {
    assertEquals(503, answer.status(), answer::text);
    assertEquals("store-unavailable", Editor.json(answer).get("code").asText());
    assertTrue(answer.header("retry-after").matches("[0-9]+"), answer::toString);
  }

  private Wire.Answer ready() throws IOException {
    return get("/health/ready");
  }

  private Wire.Answer get(String path) throws IOException {
    try (Wire wire = Wire.to(program.port())) {
      return wire.send(Request.of("GET", path).bytes()).read();
    }
  }
}
