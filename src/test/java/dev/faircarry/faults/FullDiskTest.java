package dev.faircarry.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No room on the disk, no room in the quota, a file that cannot be written. */
@Tag("slow")
class FullDiskTest {
  private static final int DISK_BYTES = 1_500_000;
  private static final int BALLAST_BYTES = 500_000;
  private static final int MOST_WRITES = 500;

  @TempDir Path folder;

  @Test
  void fullDiskIsToldAndRecoveredFrom() throws Exception {
    Path disk = Files.createDirectory(folder.resolve("disk"));
    assumeTrue(
        run("mount", "-t", "tmpfs", "-o", "size=" + DISK_BYTES, "none", disk.toString()) == 0,
        "mounting is not permitted here, so that there is no small disk to fill; the test of a"
            + " quota runs all the same");
    try (Program program =
        Program.start(
            Program.Setup.sqlite(folder)
                .with("FAIRCARRY_DATABASE_FILE", disk.resolve("trips.db").toString()))) {
      Path ballast = Files.write(disk.resolve("ballast"), new byte[BALLAST_BYTES]);
      Editor editor = Editor.begin("127.0.0.1", program.port(), "full");
      try (Wire wire = editor.connect(program.port())) {
        Wire.Answer refused = writeUntilRefused(editor, wire);
        assertEquals(507, refused.status(), refused::text);
        assertEquals("store-full", Editor.json(refused).get("code").asText());
        assertEquals(507, editor.change(wire, "no room").status());
        assertEquals(200, wire.send(editor.request("GET", "").bytes()).read().status());
        Files.delete(ballast);
        assertEquals(200, editor.change(wire, "room again").status());
      }
      editor.verify(program.port(), 1);
      program.stop();
      KillSqliteTest.intact(disk.resolve("trips.db"));
    } finally {
      assertEquals(0, run("umount", "-l", disk.toString()));
    }
  }

  @Test
  void spentQuotaIsToldAndRecoveredFrom() throws Exception {
    Program.Setup setup = Program.Setup.sqlite(folder);
    try (Program program = Program.start(setup)) {
      Editor editor = Editor.begin("127.0.0.1", program.port(), "quota");
      try (Wire wire = editor.connect(program.port())) {
        long journal = Files.size(folder.resolve("trips.db-wal"));
        limitFiles(program, String.valueOf(journal + 100_000));
        Wire.Answer refused = writeUntilRefused(editor, wire);
        assertTrue(refused.status() == 503 || refused.status() == 507, refused::text);
        assertEquals(200, wire.send(editor.request("GET", "").bytes()).read().status());
        limitFiles(program, "unlimited");
        assertEquals(200, editor.change(wire, "room again").status());
      }
      editor.verify(program.port(), 1);
      program.stop();
    }
    KillSqliteTest.intact(setup.file());
  }

  @Test
  void fileThatCannotBeWrittenIsToldAndRecoveredFrom() throws Exception {
    Program.Setup setup = Program.Setup.sqlite(folder);
    Editor editor;
    try (Program program = Program.start(setup)) {
      editor = Editor.begin("127.0.0.1", program.port(), "read only");
      program.stop();
    }
    Files.setPosixFilePermissions(setup.file(), PosixFilePermissions.fromString("r--r--r--"));
    // The superuser may write everything; without that right it is like everybody else.
    Program.Setup ordinary =
        run("test", "-w", setup.file().toString()) != 0
            ? setup
            : setup.behind(
                "setpriv",
                "--bounding-set",
                "-dac_override,-dac_read_search",
                "--inh-caps",
                "-dac_override,-dac_read_search");
    try (Program program = Program.start(ordinary);
        Wire wire = editor.connect(program.port())) {
      assertEquals(200, wire.send(editor.request("GET", "").bytes()).read().status());
      Wire.Answer refused = editor.change(wire, "refused");
      assertEquals(503, refused.status(), refused::text);
      assertEquals("store-read-only", Editor.json(refused).get("code").asText());
      assertTrue(refused.header("retry-after").matches("[0-9]+"), refused::toString);
      Files.setPosixFilePermissions(setup.file(), PosixFilePermissions.fromString("rw-------"));
      Patience.until("written again", () -> editor.change(wire, "again").status() == 200);
      editor.verify(program.port(), 1);
      program.stop();
    }
    KillSqliteTest.intact(setup.file());
  }

  private static Wire.Answer writeUntilRefused(Editor editor, Wire wire) throws IOException {
    for (int i = 0; i < MOST_WRITES; i++) {
      Wire.Answer answer = editor.change(wire, "write " + i);
      if (answer.status() != 200) {
        return answer;
      }
    }
    throw new AssertionError("there is room for everything");
  }

  private static void limitFiles(Program program, String bytes) throws Exception {
    assertEquals(
        0, run("prlimit", "--pid", String.valueOf(program.pid()), "--fsize=" + bytes + ":"));
  }

  private static int run(String... command) throws IOException, InterruptedException {
    Process process = new ProcessBuilder(List.of(command)).redirectErrorStream(true).start();
    process.getInputStream().readAllBytes();
    return process.waitFor();
  }
}
