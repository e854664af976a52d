package dev.faircarry.cli;

import dev.faircarry.app.CannotListen;
import dev.faircarry.app.CannotOpen;
import dev.faircarry.config.BadSetting;
import dev.faircarry.config.Setting;
import dev.faircarry.config.Settings;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code serve}: answers over HTTP until it is stopped. */
@Command(name = "serve", description = "Answers over HTTP until it is stopped.")
final class ServeCommand implements Callable<Integer> {
  private final Service service;
  private final SettingFlags flags;
  private final Console console;

  @Option(
      names = "--demo",
      description =
          "serves a made-up trip from a temporary directory and prints links to it; nothing is kept")
  private boolean demo;

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
     * @param demo whether a made-up trip is served and nothing kept
     * @param begun told once requests are answered
     */
    void serve(Settings settings, boolean demo, Consumer<Begun> begun);
  }

  @Override
  public Integer call() {
    Settings settings = flags.read(console);
    if (demo) {
      refuseWithDemo();
    }
    String host = settings.host();
    try {
      service.serve(settings, demo, begun -> console.print(DemoText.listening(host, begun)));
    } catch (CannotListen e) {
      throw new BadInput("Cannot listen on " + host + ", port " + settings.port() + ".");
    } catch (CannotOpen e) {
      throw new BadInput(e.code() + ": " + e.getMessage());
    }
    return ExitCode.FINE.number();
  }

  /** Only flags are refused: a variable may be set for the service that is usually started here. */
  private void refuseWithDemo() {
    String faults =
        List.of(Setting.DATABASE_FILE, Setting.KEY_FILE).stream()
            .filter(flags::isStated)
            .map(setting -> setting.flag().orElseThrow())
            .map(
                flag ->
                    new BadSetting(
                        BadSetting.Code.NOT_WITH_DEMO,
                        flag,
                        "--demo keeps nothing; leave out " + flag + ", or --demo."))
            .map(BadSetting::text)
            .collect(Collectors.joining("\n"));
    if (!faults.isEmpty()) {
      throw new BadInput(faults);
    }
  }
}
