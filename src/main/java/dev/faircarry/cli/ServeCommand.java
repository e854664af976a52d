package dev.faircarry.cli;

import dev.faircarry.app.CannotListen;
import dev.faircarry.app.CannotOpen;
import dev.faircarry.config.Settings;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** {@code serve}: answers over HTTP until it is stopped. */
@Command(name = "serve", description = "Answers over HTTP until it is stopped.")
final class ServeCommand implements Callable<Integer> {
  private final Service service;
  private final SettingFlags flags;
  private final Console console;

  /**
   * @param flags what is set; its flags are given to the command by whoever puts it together
   */
  ServeCommand(Service service, SettingFlags flags, Console console) {
    this.service = service;
    this.flags = flags;
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
    void serve(Settings settings, java.util.function.IntConsumer listening);
  }

  @Override
  public Integer call() {
    Settings settings = flags.read(console);
    String host = settings.host();
    try {
      service.serve(
          settings, actual -> console.print("Listening on http://" + host + ":" + actual + "/\n"));
    } catch (CannotListen e) {
      throw new BadInput("Cannot listen on " + host + ", port " + settings.port() + ".");
    } catch (CannotOpen e) {
      throw new BadInput(e.code() + ": " + e.getMessage());
    }
    return ExitCode.FINE.number();
  }
}
