package dev.faircarry.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Killed with -9 in the middle of writing, ten times, after thousands of acknowledged writes:
 * whatever was acknowledged is there.
 */
@Tag("slow")
abstract class KillContract {
  private static final int KILLS = 10;
  private static final int EDITORS = 4;
  private static final int LEAST = 150;
  private static final int MORE = 150;
  private static final long SEED = 9_137;
  private static final long PATIENCE_SECONDS = 300;

  @TempDir Path folder;

  abstract Program.Setup setup() throws Exception;

  /** What the store itself says about its state, once the service is gone. */
  abstract void intact() throws Exception;

  @Test
  void nothingAcknowledgedIsLost() throws Exception {
    Program.Setup setup = setup();
    Random random = new Random(SEED);
    List<Editor> editors = new ArrayList<>();
    int before = 0;
    for (int round = 1; round <= KILLS; round++) {
      int[] known = editors.stream().mapToInt(Editor::acknowledged).toArray();
      try (Program program = Program.start(setup)) {
        for (int i = 0; i < editors.size(); i++) {
          editors.get(i).verify(program.port(), known[i] - 20);
        }
        while (editors.size() < EDITORS) {
          String address = "127.0.0." + (11 + editors.size());
          editors.add(Editor.begin(address, program.port(), "trip " + editors.size()));
        }
        before += writeAndKill(program, editors, round, LEAST + random.nextInt(MORE));
      }
    }
    try (Program program = Program.start(setup)) {
      for (Editor editor : editors) {
        // The last reading is of everything; one link may ask a limited number of times.
        editor.verify(program.port(), Math.max(1, editor.acknowledged() - 400));
      }
      program.stop();
    }
    intact();
    assertTrue(before >= KILLS * LEAST, before + " writes, seed " + SEED);
  }

  /** Lets all editors write until enough is acknowledged, then kills while they go on. */
  private static int writeAndKill(Program program, List<Editor> editors, int round, int enough)
      throws Exception {
    CountDownLatch left = new CountDownLatch(enough);
    ExecutorService pool = Executors.newFixedThreadPool(editors.size());
    try {
      List<Future<Integer>> writing = new ArrayList<>();
      for (Editor editor : editors) {
        writing.add(pool.submit(() -> write(program, editor, round, left)));
      }
      assertTrue(left.await(PATIENCE_SECONDS, TimeUnit.SECONDS), "the service writes too slowly");
      program.kill();
      int written = 0;
      for (Future<Integer> each : writing) {
        written += each.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
      }
      return written;
    } finally {
      pool.shutdownNow();
    }
  }

  private static int write(Program program, Editor editor, int round, CountDownLatch left)
      throws IOException {
    int written = 0;
    try (Wire wire = editor.connect(program.port())) {
      while (true) {
        Wire.Answer answer = editor.change(wire, "round " + round + " write " + written);
        assertEquals(200, answer.status(), answer::text);
        written++;
        left.countDown();
      }
    } catch (IOException killed) {
      return written;
    }
  }
}
