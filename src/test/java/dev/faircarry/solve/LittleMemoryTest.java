package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.oracle.Family;
import dev.faircarry.oracle.FamilyTrips;
import dev.faircarry.oracle.RandomSplits;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.io.File;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The largest trips are split within 512 MB of heap and half a megabyte of stack, in processes of
 * their own, and as they are with more.
 */
@Tag("slow")
class LittleMemoryTest {
  private static final long PATIENCE_SECONDS = 600;
  private static final int HANDOVERS = 8;
  private static final long SEED = 400;

  @TempDir private Path folder;

  /**
   * Splits the trip of a seed and prints all there is to the answer. Arguments: hardness, hikers,
   * pieces, days, effort, and "curve" for what few handovers lead to from a split by chance.
   */
  static final class Splitting {
    private Splitting() {}

    public static void main(String[] args) {
      int hikers = Integer.parseInt(args[1]);
      int pieces = Integer.parseInt(args[2]);
      long effort = Long.parseLong(args[4]);
      Family family =
          Family.plain(hikers, pieces, 5, Family.Hardness.valueOf(args[0]))
              .overDays(Integer.parseInt(args[3]))
              .withRules();
      Trip trip = FamilyTrips.trip(SEED, family);
      System.out.println(SplitSolver.solve(trip, effort, Watch.NONE));
      if (args.length > 5) {
        Split earlier = RandomSplits.sound(trip, new SplittableRandom(SEED));
        System.out.println(
            RebalanceSolver.curve(trip, earlier, Set.of(), HANDOVERS, effort, Watch.NONE));
      }
    }
  }

  /** Where the classes of this test are; some runners load them by a loader of their own. */
  private static String classPath() {
    List<String> entries = new ArrayList<>();
    if (LittleMemoryTest.class.getClassLoader() instanceof URLClassLoader loader) {
      for (URL url : loader.getURLs()) {
        entries.add(new File(url.getPath()).getAbsolutePath());
      }
    }
    entries.add(System.getProperty("java.class.path"));
    return String.join(File.pathSeparator, entries);
  }

  private String answer(Family.Hardness hardness, String... options) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of(options));
    command.addAll(List.of("-cp", classPath()));
    command.add(Splitting.class.getName());
    command.addAll(List.of(hardness.name(), "60", "400", "1", "1000000"));
    File out = folder.resolve("out").toFile();
    File err = folder.resolve("err").toFile();
    Process process = new ProcessBuilder(command).redirectOutput(out).redirectError(err).start();
    try {
      assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), "does not end");
    } finally {
      process.destroyForcibly();
    }
    String told = Files.readString(err.toPath());
    assertEquals(0, process.exitValue(), () -> String.join(" ", options) + ": " + told);
    return Files.readString(out.toPath());
  }

  @Test
  void sixtyHikersAndFourHundredPieces() throws Exception {
    for (Family.Hardness hardness : Family.Hardness.values()) {
      String usual = answer(hardness);
      assertTrue(usual.startsWith("Solved"), usual);
      assertEquals(
          usual, answer(hardness, "-Xmx512m", "-Xss512k"), () -> "seed " + SEED + " " + hardness);
    }
  }
}
