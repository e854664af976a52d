package dev.faircarry.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The system calls of the program, as strace saw them: before a change is acknowledged, what was
 * written to the journal of the SQLite file has been synced to the disk.
 */
@Tag("slow")
class SyncTraceTest {
  private static final int CHANGES = 40;
  private static final Pattern CALL =
      Pattern.compile("^(\\d+) +(?:<\\.\\.\\. )?(\\w+)(\\(| resumed>)(.*)$");
  private static final Pattern DONE = Pattern.compile("\\) += 0$");

  @TempDir Path folder;

  @Test
  void journalIsSyncedBeforeTheAnswerIsSent() throws Exception {
    assumeTrue(
        canTrace(),
        "strace is not there, or tracing is not permitted here: nothing is known about the order"
            + " of syncs and answers");
    Path trace = folder.resolve("trace");
    Program.Setup setup =
        Program.Setup.sqlite(folder)
            .behind(
                "strace",
                "-f",
                "-y",
                "-s",
                "200",
                "-o",
                trace.toString(),
                "-e",
                "trace=pwrite64,fdatasync,fsync,write,writev,sendto,sendmsg");
    try (Program program = Program.start(setup)) {
      Editor editor = Editor.begin("127.0.0.1", program.port(), "traced");
      try (Wire wire = editor.connect(program.port())) {
        for (int i = 0; i < CHANGES; i++) {
          Request change =
              editor
                  .request("PATCH", "")
                  .ifMatch(1 + i)
                  .with("X-Request-Id", "traced-" + i + "-")
                  .json("{\"name\": \"n" + i + "\"}");
          assertEquals(200, wire.send(change.bytes()).read().status());
        }
      }
    }
    assertEquals(CHANGES, acknowledgedAfterSync(Files.readAllLines(trace)));
  }

  private boolean canTrace() throws IOException, InterruptedException {
    try {
      Process tried =
          new ProcessBuilder("strace", "-f", "-o", folder.resolve("tried").toString(), "true")
              .redirectErrorStream(true)
              .start();
      tried.getInputStream().readAllBytes();
      return tried.waitFor() == 0;
    } catch (IOException e) {
      return false;
    }
  }

  /** How many answers went out; fails at one that went out before its change was synced. */
  private static int acknowledgedAfterSync(List<String> calls) {
    Map<String, String> begun = new HashMap<>();
    Set<String> answered = new HashSet<>();
    boolean written = false;
    boolean synced = false;
    for (String line : calls) {
      Matcher call = CALL.matcher(line);
      if (!call.matches()) {
        continue;
      }
      String thread = call.group(1);
      String name = call.group(2);
      boolean begins = call.group(3).equals("(");
      String about = begins ? call.group(4) : begun.getOrDefault(thread, "");
      begun.put(thread, about);
      boolean journal = about.contains("trips.db-wal>");
      if (name.equals("pwrite64") && journal && begins) {
        written = true;
        synced = false;
      } else if (name.endsWith("sync") && journal && DONE.matcher(line).find()) {
        synced = true;
      } else if (begins && about.contains("X-Request-Id: traced-") && about.contains("200 OK")) {
        assertTrue(written && synced, "answered before the sync: " + line);
        answered.add(about.replaceAll(".*X-Request-Id: (traced-\\d+)-.*", "$1"));
        written = false;
      }
    }
    return answered.size();
  }
}
