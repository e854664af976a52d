package dev.faircarry.cli;

import dev.faircarry.app.ServiceLimits;
import dev.faircarry.csv.Table;
import dev.faircarry.json.Reading;
import dev.faircarry.json.TablesReader;
import dev.faircarry.json.TripWriter;
import dev.faircarry.trip.Trip;
import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code trip FILE --hikers ...}: tables put into a trip. */
@Command(name = "trip", description = "Prints a trip document with tables put into it.")
final class TripCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(
      paramLabel = "FILE",
      description =
          "trip document the tables go into; it need not have hikers; - reads standard input")
  private String file = "-";

  @Option(names = "--hikers", paramLabel = "CSV", description = "in place of the hikers")
  private String hikers = "";

  @Option(names = "--kit", paramLabel = "CSV", description = "in place of all kits")
  private String kit = "";

  @Option(names = "--shared", paramLabel = "CSV", description = "in place of the shared things")
  private String shared = "";

  @Option(names = "--json", description = "tell issues as a document")
  private boolean json;

  TripCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Reading<Trip> frame =
        TablesReader.frame(console.documents().read(file, ServiceLimits.REQUEST_BYTES));
    if (frame instanceof Reading.Bad<Trip> bad) {
      return console.report(bad, json).number();
    }
    Map<Table, byte[]> tables = new EnumMap<>(Table.class);
    Map.of(Table.HIKERS, hikers, Table.KIT, kit, Table.SHARED, shared)
        .forEach(
            (table, name) -> {
              if (!name.isEmpty()) {
                tables.put(table, console.documents().read(name, ServiceLimits.REQUEST_BYTES));
              }
            });
    console.print(
        TripWriter.write(console.tables().trip(((Reading.Read<Trip>) frame).value(), tables)));
    return ExitCode.FINE.number();
  }
}
