package dev.faircarry.faults;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The program serving in a process of its own, so that it can be killed. */
final class Program implements AutoCloseable {
  private static final long PATIENCE_SECONDS = 120;
  private static final Pattern LISTENING =
      Pattern.compile("Listening on http://127\\.0\\.0\\.1:(\\d+)/");

  private final Process process;
  private final Path log;
  private final int port;

  private Program(Process process, Path log, int port) {
    this.process = process;
    this.log = log;
    this.port = port;
  }

  /** How it is started: settings, a folder for its files, and what stands before the command. */
  record Setup(Map<String, String> environment, Path folder, List<String> before) {
    /** Keeps trips in a SQLite file of the folder. */
    static Setup sqlite(Path folder) {
      return new Setup(
          Map.of("FAIRCARRY_DATABASE_FILE", folder.resolve("trips.db").toString()),
          folder,
          List.of());
    }

    /** Keeps trips in a PostgreSQL database; the key is in the folder. */
    static Setup postgres(Path folder, String url) {
      return new Setup(Map.of("FAIRCARRY_DATABASE_URL", url), folder, List.of());
    }

    Setup behind(String... command) {
      return new Setup(environment, folder, List.of(command));
    }

    Setup with(String name, String value) {
      Map<String, String> more = new LinkedHashMap<>(environment);
      more.put(name, value);
      return new Setup(Map.copyOf(more), folder, before);
    }

    Path file() {
      return folder.resolve("trips.db");
    }
  }

  static Program start(Setup setup) throws IOException {
    return start(setup, "program");
  }

  /** Starts it and waits until it listens; its log is appended to NAME.log in the folder. */
  static Program start(Setup setup, String name) throws IOException {
    Path log = setup.folder().resolve(name + ".log");
    Process process =
        builder(setup).redirectError(ProcessBuilder.Redirect.appendTo(log.toFile())).start();
    String line;
    try {
      line =
          new BufferedReader(
                  new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))
              .readLine();
    } catch (IOException e) {
      process.destroyForcibly();
      throw e;
    }
    Matcher listening = LISTENING.matcher(line == null ? "" : line);
    if (!listening.find()) {
      process.destroyForcibly();
      throw new IOException("does not listen: " + line + "\n" + Files.readString(log));
    }
    return new Program(process, log, Integer.parseInt(listening.group(1)));
  }

  static ProcessBuilder builder(Setup setup) {
    List<String> command = new ArrayList<>(setup.before());
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    // Starting quickly matters more here than running fast.
    command.addAll(List.of("-Xmx256m", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    command.addAll(program());
    command.addAll(List.of("serve", "--port", "0"));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().keySet().removeIf(name -> name.startsWith("FAIRCARRY_"));
    builder.environment().put("FAIRCARRY_KEY_FILE", setup.folder().resolve("key").toString());
    builder.environment().putAll(setup.environment());
    builder.directory(setup.folder().toFile());
    return builder;
  }

  /** The jar, where the build made one; otherwise the classes this test was loaded from. */
  private static List<String> program() {
    String jar = System.getProperty("faircarry.jar");
    if (jar != null) {
      return List.of("-jar", jar);
    }
    String classes =
        Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
            .map(entry -> Path.of(entry).toAbsolutePath().toString())
            .collect(Collectors.joining(File.pathSeparator));
    return List.of("-cp", classes, "dev.faircarry.Main");
  }

  int port() {
    return port;
  }

  /** The id of the process, or of what it was started behind. */
  long pid() {
    return process.pid();
  }

  String log() throws IOException {
    return Files.readString(log);
  }

  /** kill -9. */
  void kill() throws InterruptedException {
    process.descendants().forEach(ProcessHandle::destroyForcibly);
    process.destroyForcibly();
    assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), "does not die");
  }

  /** Asks it to stop, and waits until it has. */
  void stop() throws InterruptedException {
    process.destroy();
    assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), "does not stop");
  }

  @Override
  public void close() {
    process.descendants().forEach(ProcessHandle::destroyForcibly);
    process.destroyForcibly();
  }
}
