package dev.faircarry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The same document and effort give the same bytes in processes of their own, whatever the number
 * of cores and the memory, also where the effort ends before anything is proved.
 */
@Tag("slow")
class SameAnswerTest {
  private static final long PATIENCE_SECONDS = 300;

  private static final List<List<String>> SURROUNDINGS =
      List.of(
          List.of("-XX:ActiveProcessorCount=1", "-Xmx192m"),
          List.of("-XX:ActiveProcessorCount=2", "-Xmx512m"),
          List.of(
              "-XX:ActiveProcessorCount=2",
              "-Xmx1g",
              "-XX:+UseParallelGC",
              "-XX:TieredStopAtLevel=1"));

  @TempDir private Path folder;

  private record Ended(int code, String out, String err) {}

  private Ended run(List<String> surroundings, String... arguments) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(surroundings);
    command.add("-jar");
    command.add(Objects.requireNonNull(System.getProperty("faircarry.jar"), "faircarry.jar"));
    command.addAll(List.of(arguments));
    File out = folder.resolve("out").toFile();
    File err = folder.resolve("err").toFile();
    Process process = new ProcessBuilder(command).redirectOutput(out).redirectError(err).start();
    assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), "does not end");
    return new Ended(
        process.exitValue(), Files.readString(out.toPath()), Files.readString(err.toPath()));
  }

  /** The answer, which is the same in all surroundings. */
  private Ended same(String... arguments) throws Exception {
    Ended first = run(SURROUNDINGS.get(0), arguments);
    assertEquals("", first.err());
    for (List<String> others : SURROUNDINGS.subList(1, SURROUNDINGS.size())) {
      Ended other = run(others, arguments);
      assertEquals(first, other, () -> String.join(" ", arguments) + " " + others);
    }
    return first;
  }

  @Test
  void aSplitAndItsRebalancing() throws Exception {
    Ended split = same("split", "demo-data/many-hands.json", "--json", "--effort", "20000");
    assertEquals(1, split.code(), "not proved");
    assertTrue(split.out().contains("\"proved\" : false"), split::out);
    assertTrue(split.out().contains("\"cutByClock\" : false"), split::out);
    Path agreed = folder.resolve("split.json");
    Files.writeString(agreed, split.out());
    Path changes = folder.resolve("changes.json");
    Files.writeString(changes, "{\"changes\": [{\"kind\": \"drops-out\", \"hiker\": \"dilan\"}]}");
    Ended moved =
        same(
            "rebalance",
            "demo-data/many-hands.json",
            agreed.toString(),
            changes.toString(),
            "--json",
            "--effort",
            "300000");
    assertTrue(moved.out().contains("\"handovers\""), moved::out);
    assertTrue(moved.out().contains("\"complete\" : false"), moved::out);
  }

  @Test
  void whatKeepsItFromBeingFairer() throws Exception {
    Ended explained = same("explain", "demo-data/high-tarns.json", "--json", "--effort", "30000");
    assertTrue(explained.out().contains("\"proved\" : false"), explained::out);
  }
}
