package dev.faircarry.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Parse;
import dev.faircarry.weigh.ScaleReading;
import dev.faircarry.weigh.WeighLimits;
import dev.faircarry.weigh.Weighed;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReadingTableTest {
  private static final Trip TRIP =
      TableIssues.trip(
          """
          {"format": "faircarry-trip/1", "name": "n", "days": 1,
           "hikers": [{"id": "a", "name": "Ada", "targetLoad": "9 kg",
                       "kit": [{"id": "mug", "mass": "1 g"}]}],
           "shared": [{"id": "pot", "mass": "1 g"},
                      {"id": "tarp", "parts": [{"id": "fly", "mass": "1 g"}]}]}
          """);

  private static Mass mass(String text) {
    return ((Parse.Read<Mass>) Mass.parse(text)).value();
  }

  private static List<String> codes(String text) {
    return TableIssues.codes(TableIssues.issues(ReadingTable.read(TableIssues.bytes(text), TRIP)));
  }

  @Test
  void readingsOfEveryKindComeBack() {
    List<ScaleReading> readings =
        List.of(
            new ScaleReading(new Weighed.WholePack("a"), mass("27 lb 3 oz"), "7:10", "hook", true),
            new ScaleReading(new Weighed.EmptyPack("a"), mass("1.2 kg"), "", "", false),
            new ScaleReading(new Weighed.OfKit("a", "mug"), mass("62 g"), "=now", "-x, y", false),
            new ScaleReading(
                new Weighed.Piece(PieceRef.of("tarp/fly")), mass("700 g"), "", "kitchen", false));
    byte[] table = ReadingTable.write(readings);
    assertEquals(readings, TableIssues.value(ReadingTable.read(table)));
    assertEquals(readings, TableIssues.value(ReadingTable.read(table, TRIP)));
  }

  @Test
  void hikersMayBeCalledByName() {
    List<ScaleReading> readings =
        TableIssues.value(
            ReadingTable.read(TableIssues.bytes("kind;hiker;mass\nwhole-pack;Ada;12 kg\n"), TRIP));
    assertEquals(new Weighed.WholePack("a"), readings.get(0).weighed());
  }

  @Test
  void everythingThatIsWrongIsToldAtOnceWithItsCell() {
    assertEquals(
        List.of(
            "unknown-word @ readings, row 2, kind",
            "missing @ readings, row 3, kind",
            "unknown-hiker @ readings, row 4, hiker",
            "unknown-thing @ readings, row 5, item",
            "unknown-piece @ readings, row 6, piece",
            "unknown-piece @ readings, row 7, piece",
            "conflicting-fields @ readings, row 8, hiker",
            "no-unit @ readings, row 8, mass",
            "missing @ readings, row 9, hiker",
            "out-of-range @ readings, row 9, mass"),
        codes(
            """
            kind,hiker,item,piece,mass,at,source
            bag,a,,,1 g,,
            ,a,,,1 g,,
            empty-pack,zoe,,,1 g,,
            kit,a,cup,,1 g,,
            piece,,,pan,1 g,,
            piece,,,tarp,1 g,,
            piece,a,,pot,1,,
            whole-pack,,,,0 g,,
            """));
  }

  @Test
  void moreReadingsThanAreReadAreTold() {
    String many = "kind,hiker,mass\n" + "whole-pack,a,9 kg\n".repeat(WeighLimits.READINGS);
    assertEquals(
        WeighLimits.READINGS,
        TableIssues.value(ReadingTable.read(TableIssues.bytes(many), TRIP)).size());
    assertTrue(codes(many + "whole-pack,a,9 kg\n").contains("too-many @ readings"), "one too many");
  }
}
