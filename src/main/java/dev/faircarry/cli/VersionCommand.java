package dev.faircarry.cli;

import dev.faircarry.json.PlainAnswers;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code version}: name and version of the program. */
@Command(name = "version", description = "Prints the version of this program.")
final class VersionCommand implements Callable<Integer> {
  private final String version;
  private final Console console;

  @Option(names = "--json", description = "answer as a document")
  private boolean json;

  VersionCommand(String version, Console console) {
    this.version = version;
    this.console = console;
  }

  @Override
  public Integer call() {
    if (json) {
      console.print(PlainAnswers.version(version));
    } else {
      console.print("faircarry " + version + "\n");
    }
    return ExitCode.FINE.number();
  }
}
