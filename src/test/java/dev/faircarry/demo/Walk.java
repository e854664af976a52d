package dev.faircarry.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/**
 * What a script of the demo data came to.
 *
 * @param out lines on standard output
 * @param told what stands on standard error
 */
public record Walk(int exitCode, List<String> out, String told) {
  static final Path SCRIPTS = Path.of("demo-data", "scripts");

  private static final long PATIENCE_SECONDS = 300;

  /** What of the surroundings would let a request go elsewhere. */
  private static final Set<String> ELSEWHERE =
      Set.of("http_proxy", "HTTP_PROXY", "all_proxy", "ALL_PROXY", "FAIRCARRY_CREATION_KEY");

  /**
   * Runs a script as somebody at a terminal would.
   *
   * @param directory where its output goes
   * @param settings variables of its surroundings
   */
  public static Walk of(
      Path directory, String script, Map<String, String> settings, String... arguments) {
    List<String> command = new ArrayList<>(List.of("sh", SCRIPTS.resolve(script).toString()));
    command.addAll(List.of(arguments));
    Path out = directory.resolve("out");
    Path told = directory.resolve("told");
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(told.toFile());
    builder.environment().keySet().removeAll(ELSEWHERE);
    builder.environment().putAll(settings);
    try {
      Process process = builder.start();
      if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new AssertionError(script + " goes on and on: " + Files.readString(told));
      }
      return new Walk(process.exitValue(), Files.readAllLines(out), Files.readString(told));
    } catch (IOException e) {
      throw new AssertionError(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError(e);
    }
  }

  /** The lines below a heading, up to the next one. */
  public List<String> below(String heading) {
    int start = out.indexOf(heading);
    if (start < 0) {
      throw new AssertionError("no “" + heading + "” in " + this);
    }
    List<String> rest = out.subList(start + 1, out.size());
    return rest.contains("") ? rest.subList(0, rest.indexOf("")) : rest;
  }
}
