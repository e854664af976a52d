package dev.faircarry.http;

import dev.faircarry.csv.ReadingTable;
import dev.faircarry.csv.SplitTable;
import dev.faircarry.csv.Table;
import dev.faircarry.csv.TableWriter;
import dev.faircarry.csv.TripTables;
import dev.faircarry.json.ScaleDocument;
import dev.faircarry.json.SplitReader;
import dev.faircarry.json.SplitWriter;
import dev.faircarry.json.TablesReader;
import dev.faircarry.json.TripParts;
import dev.faircarry.json.TripReader;
import dev.faircarry.json.TripWriter;
import io.javalin.http.Context;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Tables in place of documents and the other way round; nothing is kept. */
final class TableRoutes implements Routes.Resource {
  private static final List<Table> OF_A_TRIP = List.of(Table.HIKERS, Table.KIT, Table.SHARED);

  @Override
  public void register(Routes routes) {
    routes.post("/v1/tables", this::intoTrip).post("/v1/tables/{table}", this::turn);
  }

  /** Tables put into a trip. */
  private void intoTrip(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    TablesReader.Asked asked =
        Problems.valueOf(
            TablesReader.read(Bodies.json(ctx), OF_A_TRIP.stream().map(Table::text).toList()));
    Map<Table, byte[]> tables = new EnumMap<>(Table.class);
    asked.tables().forEach((name, text) -> tables.put(Table.of(name).orElseThrow(), text));
    Answers.json(
        ctx,
        TripWriter.write(
            Problems.valueOf(
                TripTables.into(asked.frame(), tables, TripTables.Way.REPLACE), "/trip")));
  }

  /** A table sent comes back as JSON, a document as the table. */
  private void turn(Context ctx) {
    Table table =
        Table.of(ctx.pathParam("table"))
            .orElseThrow(
                () -> new ProblemException(ProblemCode.NOT_FOUND, "No resource has this address."));
    Parameters.known(ctx);
    if (Bodies.kind(ctx).equals(Accepting.CSV)) {
      Accepting.json(ctx);
      Answers.json(ctx, document(table, Bodies.read(ctx, Set.of(Accepting.CSV))));
    } else {
      Accepting.oneOf(ctx, List.of(Accepting.CSV));
      byte[] document =
          Bodies.read(ctx, new LinkedHashSet<>(List.of(Accepting.JSON, Accepting.CSV)));
      Answers.table(ctx, table, table(table, document));
    }
  }

  private static byte[] document(Table table, byte[] text) {
    return switch (table) {
      case HIKERS -> TripParts.hikers(Problems.valueOf(TripTables.alone(table, text), ""));
      case KIT -> TripParts.kits(Problems.valueOf(TripTables.alone(table, text), ""));
      case SHARED -> TripParts.shared(Problems.valueOf(TripTables.alone(table, text), ""));
      case SPLIT -> SplitWriter.write(Problems.valueOf(SplitTable.read(text, List.of()), ""));
      case READINGS -> ScaleDocument.write(Problems.valueOf(ReadingTable.read(text), ""));
    };
  }

  private static byte[] table(Table table, byte[] document) {
    return switch (table) {
      case HIKERS, KIT, SHARED ->
          TableWriter.write(table, Problems.valueOf(TripReader.read(document)));
      case SPLIT -> SplitTable.write(Problems.valueOf(SplitReader.read(document)));
      case READINGS -> ReadingTable.write(Problems.valueOf(ScaleDocument.read(document)));
    };
  }
}
