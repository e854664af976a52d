package dev.faircarry.cli;

import dev.faircarry.app.CannotListen;
import dev.faircarry.app.ServiceLimits;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code serve}: answers over HTTP until it is stopped. */
@Command(name = "serve", description = "Answers over HTTP until it is stopped.")
final class ServeCommand implements Callable<Integer> {
  private static final int HIGHEST_PORT = 65_535;

  private final Service service;
  private final Console console;

  @Option(
      names = "--host",
      paramLabel = "ADDRESS",
      description = "address to listen on (default: 127.0.0.1, this machine only)")
  private String host = ServiceLimits.DEFAULT_HOST;

  @Option(
      names = "--port",
      paramLabel = "N",
      description = "port to listen on (default: 8080; 0 takes any free one)")
  private int port = ServiceLimits.DEFAULT_PORT;

  ServeCommand(Service service, Console console) {
    this.service = service;
    this.console = console;
  }

  /** Starts the service and comes back when it has been stopped. */
  @FunctionalInterface
  public interface Service {
    /**
     * Serves until it is stopped.
     *
     * @param listening told the port, once requests are answered
     */
    void serve(String host, int port, java.util.function.IntConsumer listening);
  }

  @Override
  public Integer call() {
    if (port < 0 || port > HIGHEST_PORT) {
      throw new BadInput("--port is a whole number from 0 to " + HIGHEST_PORT + ".");
    }
    try {
      service.serve(
          host,
          port,
          actual -> console.print("Listening on http://" + host + ":" + actual + "/\n"));
    } catch (CannotListen e) {
      throw new BadInput("Cannot listen on " + host + ", port " + port + ".");
    }
    return ExitCode.FINE.number();
  }
}
