package dev.faircarry.cli;

import dev.faircarry.app.ServiceLimits;
import dev.faircarry.csv.Table;
import dev.faircarry.csv.TableWriter;
import dev.faircarry.json.Reading;
import dev.faircarry.json.TripReader;
import dev.faircarry.trip.Trip;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code table TABLE FILE}: a part of a trip as a table. */
@Command(name = "table", description = "Prints hikers, kits or shared things of a trip as CSV.")
final class TableCommand implements Callable<Integer> {
  /** The tables of a trip. */
  enum OfATrip {
    HIKERS(Table.HIKERS),
    KIT(Table.KIT),
    SHARED(Table.SHARED);

    private final Table table;

    OfATrip(Table table) {
      this.table = table;
    }
  }

  private final Console console;

  @Parameters(index = "0", paramLabel = "TABLE", description = "hikers, kit or shared")
  private OfATrip table = OfATrip.HIKERS;

  @Parameters(
      index = "1",
      paramLabel = "FILE",
      description = "trip document; - reads standard input")
  private String file = "-";

  @Option(names = "--json", description = "tell issues as a document")
  private boolean json;

  TableCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Reading<Trip> reading =
        TripReader.read(console.documents().read(file, ServiceLimits.REQUEST_BYTES));
    if (reading instanceof Reading.Bad<Trip> bad) {
      return console.report(bad, json).number();
    }
    console.print(TableWriter.write(table.table, ((Reading.Read<Trip>) reading).value()));
    return ExitCode.FINE.number();
  }
}
