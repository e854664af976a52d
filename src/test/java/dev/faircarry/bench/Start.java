package dev.faircarry.bench;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * How long the packaged program takes from being called to its first answer that it is ready, and
 * how much memory it holds when nobody asks anything of it.
 *
 * <p>Arguments: how often to start it, then flags of the virtual machine.
 */
public final class Start {
  private static final Path JAR = Path.of("target", "faircarry.jar");
  private static final long LOOK_MILLIS = 2;
  private static final int IDLE_SECONDS = 60;

  private Start() {}

  /** Starts, asks and prints. */
  public static void main(String[] arguments) throws Exception {
    int times = Integer.parseInt(arguments[0]);
    List<String> flags = Arrays.asList(arguments).subList(1, arguments.length);
    List<Long> millis = new ArrayList<>();
    Path folder = Files.createTempDirectory("faircarry-start");
    for (int i = 0; i < times; i++) {
      Process program = null;
      try {
        int port = freePort();
        long begun = System.nanoTime();
        program = begin(flags, folder, port);
        until(program, port);
        millis.add(TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun));
        if (i == times - 1) {
          long first = residentMebibytes(program);
          TimeUnit.SECONDS.sleep(IDLE_SECONDS);
          say("resident: %d MiB when ready, %d after a minute", first, residentMebibytes(program));
          gather(program);
          say("%d when its garbage is collected", residentMebibytes(program));
        }
      } finally {
        if (program != null) {
          program.destroy();
          program.waitFor();
        }
      }
    }
    say("first start, with a new database: %d ms", millis.get(0));
    List<Long> others = millis.stream().skip(1).sorted().toList();
    if (!others.isEmpty()) {
      say(
          "%d starts after that: median %d, worst %d ms",
          others.size(), others.get(others.size() / 2), others.get(others.size() - 1));
    }
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }

  private static Process begin(List<String> flags, Path folder, int port) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(flags);
    command.addAll(List.of("-jar", JAR.toString(), "serve", "--port", String.valueOf(port)));
    command.addAll(List.of("--database-file", folder.resolve("trips.db").toString()));
    command.addAll(List.of("--key-file", folder.resolve("keys").toString()));
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve("log").toFile())
        .start();
  }

  private static void until(Process program, int port) throws Exception {
    while (!ready(port)) {
      if (!program.isAlive()) {
        throw new IOException("it has ended with " + program.exitValue());
      }
      TimeUnit.MILLISECONDS.sleep(LOOK_MILLIS);
    }
  }

  private static boolean ready(int port) {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      socket
          .getOutputStream()
          .write(
              "GET /health/ready HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"
                  .getBytes(StandardCharsets.US_ASCII));
      InputStream in = socket.getInputStream();
      String answer = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return answer.startsWith("HTTP/1.1 200 ");
    } catch (IOException e) {
      return false;
    }
  }

  private static long residentMebibytes(Process program) throws IOException {
    for (String line : Files.readAllLines(Path.of("/proc", program.pid() + "", "status"))) {
      if (line.startsWith("VmRSS:")) {
        return Long.parseLong(line.replaceAll("[^0-9]", "")) / 1024;
      }
    }
    throw new IOException("/proc does not tell");
  }

  private static void gather(Process program) throws IOException, InterruptedException {
    String jcmd = Path.of(System.getProperty("java.home"), "bin", "jcmd").toString();
    new ProcessBuilder(jcmd, String.valueOf(program.pid()), "GC.run")
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start()
        .waitFor();
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0)) {
      return socket.getLocalPort();
    }
  }

  private static void say(String pattern, Object... values) {
    System.out.println(String.format(Locale.ROOT, pattern, values));
  }
}
