package dev.faircarry.cli;

import dev.faircarry.app.CannotOpen;
import dev.faircarry.config.Settings;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code backup FILE}: copies the SQLite database while the service runs. */
@Command(name = "backup", description = "Copies the SQLite database, also while the service runs.")
final class BackupCommand implements Callable<Integer> {
  private final Copying copying;
  private final SettingFlags flags;
  private final Console console;

  @Parameters(paramLabel = "FILE", description = "the copy; must not be there yet")
  private Path file = Path.of("");

  BackupCommand(Copying copying, SettingFlags flags, Console console) {
    this.copying = copying;
    this.flags = flags;
    this.console = console;
  }

  /** Copies the database that the settings name. */
  @FunctionalInterface
  public interface Copying {
    /**
     * Writes the copy.
     *
     * @throws CannotOpen if the database cannot be read or the copy cannot be written
     */
    void copy(Settings settings, Path file);
  }

  @Override
  public Integer call() {
    Settings settings = flags.read(console);
    if (settings.databaseUrl().isPresent()) {
      throw new BadInput("Trips are kept on PostgreSQL; use pg_dump, which does the same.");
    }
    try {
      copying.copy(settings, file);
    } catch (CannotOpen e) {
      throw new BadInput(e.code() + ": " + e.getMessage());
    }
    console.print("Copied to " + file + ". It opens with the keys of this service only.\n");
    return ExitCode.FINE.number();
  }
}
