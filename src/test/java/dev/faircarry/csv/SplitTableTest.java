package dev.faircarry.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.app.Checked;
import dev.faircarry.app.SplitResult;
import dev.faircarry.app.SplitTrip;
import dev.faircarry.demo.DemoTrips;
import dev.faircarry.solve.SplitSolver;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SplitTableTest {
  private static final long EFFORT_STEPS = 200_000;

  static List<String> demos() {
    return DemoTrips.names();
  }

  private static Split read(String text) {
    return TableIssues.value(SplitTable.read(TableIssues.bytes(text), List.of()));
  }

  private static List<String> codes(String text) {
    return TableIssues.codes(
        TableIssues.issues(SplitTable.read(TableIssues.bytes(text), List.of())));
  }

  /** Whatever split is found comes back from its table, with names beside the ids or without. */
  @ParameterizedTest
  @MethodSource("demos")
  void splitsOfTheDemoTripsComeBack(String demo) {
    Trip trip = DemoTrips.trip(demo);
    SplitResult result =
        new SplitTrip(SplitSolver::solve, new Checked(), () -> 0).split(trip, EFFORT_STEPS);
    if (result instanceof SplitResult.Found found) {
      for (byte[] table :
          List.of(SplitTable.write(found.split()), SplitTable.write(found.split(), trip))) {
        assertEquals(found.split(), TableIssues.value(SplitTable.read(table, trip.hikers())), demo);
      }
    } else {
      assertTrue(result instanceof SplitResult.Impossible, demo);
    }
  }

  @Test
  void aSplitMadeByHandNeedsThreeColumns() {
    assertEquals(
        new Split(
            List.of(
                new Carry("ada", PieceRef.part("tarp", "fly"), 1),
                new Carry("ben", PieceRef.item("dinner"), 5)),
            List.of(),
            List.of()),
        read("hiker;piece;units\nada;tarp/fly;\nben;dinner;5\n"));
  }

  @Test
  void hikersMayBeCalledByName() {
    Trip trip = TableIssues.BASE;
    Split split =
        TableIssues.value(
            SplitTable.read(TableIssues.bytes("hiker,piece\nAda,pot\n"), trip.hikers()));
    assertEquals("ada", split.carries().get(0).hiker());
  }

  @Test
  void everythingThatIsWrongIsToldAtOnce() {
    assertEquals(
        List.of(
            "unknown-word @ split, row 2, kind",
            "missing @ split, row 3, hiker",
            "bad-id @ split, row 3, piece",
            "duplicate-name @ split, row 5, piece",
            "out-of-range @ split, row 6, units",
            "missing @ split, row 7, day",
            "out-of-range @ split, row 8, day",
            "missing @ split, row 8, to",
            "conflicting-fields @ split, row 9, day",
            "conflicting-fields @ split, row 9, to"),
        codes(
            """
            kind,hiker,piece,units,day,to
            holds,ada,pot,,,
            ,,a b,,,
            carries,ada,pan,1,,
            carries,ada,pan,2,,
            carries,ada,cup,0,,
            opens,ada,dinner,1,,
            hands-over,ada,pan,1,31,
            carries,ada,mug,1,2,ben
            """));
  }

  @Test
  void namesAreForPeopleAndNoFormula() {
    Trip trip = TableIssues.of(Table.SHARED, "id,name,mass\npot,\"=Pot, large\",1 g\n");
    Split split = read("hiker,piece\nada,pot\n");
    String table = new String(SplitTable.write(split, trip), StandardCharsets.UTF_8);
    assertEquals(
        List.of(
            "kind,hiker,hikerName,piece,pieceName,units,day,to",
            "carries,ada,Ada,pot,\"'=Pot, large\",1,,"),
        table.lines().toList());
  }
}
