package dev.faircarry.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.Issue;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Tables put into a trip: what they make, and how they are told when they are wrong. */
class TripTablesTest {

  private static TableReading<Trip> both(String hikers, String kit) {
    return TripTables.into(
        TableIssues.BASE,
        Map.of(Table.HIKERS, TableIssues.bytes(hikers), Table.KIT, TableIssues.bytes(kit)),
        TripTables.Way.REPLACE);
  }

  @Test
  void everythingThatIsWrongIsToldAtOnceWithItsCell() {
    List<Issue> issues =
        TableIssues.of(
            Table.SHARED,
            TableIssues.bytes(
                """
                id,name,mass,stow,count,use,perDay,leaves,onDays,owner,sleeps
                pot,Pot,3 stones,roof,,,,,,,
                pot,Pan,410,inside,,evenly,,500 g,,zoe,x

                bars,Bars,50 g,,three,units-per-day,4|x,,2|1,ada,
                ,,1 g,,,,,,,,
                """));
    assertEquals(
        List.of(
            "unknown-unit @ shared, row 2, mass",
            "unknown-word @ shared, row 2, stow",
            "duplicate-id @ shared, row 3, id",
            "no-unit @ shared, row 3, mass",
            "unknown-hiker @ shared, row 3, owner",
            "wrong-type @ shared, row 3, sleeps",
            "wrong-type @ shared, row 5, count",
            "use-with-days @ shared, row 5, use",
            "wrong-type @ shared, row 5, perDay",
            "days-not-rising @ shared, row 5, onDays",
            "missing @ shared, row 6, name"),
        TableIssues.codes(issues));
    Issue first = issues.get(0);
    assertEquals("3 stones", first.value());
    assertTrue(first.remedy().contains("kg"), first.remedy());
  }

  @Test
  void aBodyMassOrTargetLoadIsNeverToldNotEvenFromACellItSlippedInto() {
    String secret = "73.21";
    for (String row :
        List.of(
            "ada," + secret + " stones,,,,,,,",
            "ada," + secret + ",,,,,,,",
            "ada,1" + secret + " kg,1 g,,,,,,",
            "ada,,9" + secret + " kg,,,,,,",
            "ada,,,," + secret + " kg,,,,",
            "ada,,,,," + secret + ",,,",
            "ada,,,,,," + secret + " kg,,",
            "ada,,,,,,," + secret + " kg,",
            "ada,,,,,,,," + secret + " kg",
            "ada,60 kg,,,,,,,," + secret + " kg",
            secret + " kg,,,,,,,,")) {
      List<Issue> issues =
          TableIssues.of(
              Table.HIKERS,
              TableIssues.bytes(
                  """
                  id,bodyMass,targetLoad,x,targetFraction,maxPieces,minor,leavesAfterDay,packMassFrom
                  """
                      + row
                      + "\n"));
      assertFalse(issues.toString().contains("73"), row + ": " + issues);
    }
  }

  @Test
  void aHikerIsNamedByIdOrByAName() {
    Trip trip =
        TableIssues.value(
            both(
                "id,name,targetLoad\na,Ada,9 kg\nb,Ben,9 kg\n",
                "hiker,name,mass\nBen,Cup,1 oz\na,Mug,2 oz\nb,Bowl,3 oz\n"));
    assertEquals(List.of("Mug"), trip.hikers().get(0).kit().stream().map(k -> k.name()).toList());
    assertEquals(
        List.of("Cup", "Bowl"), trip.hikers().get(1).kit().stream().map(k -> k.name()).toList());
    assertEquals(
        List.of("k1", "k2"), trip.hikers().get(1).kit().stream().map(k -> k.id()).toList());
  }

  @Test
  void aNameThatTwoHikersHaveNamesNobody() {
    assertEquals(
        List.of("unknown-hiker @ kit, row 2, hiker", "missing @ kit, row 3, hiker"),
        TableIssues.codes(
            TableIssues.issues(
                both(
                    "id,name,targetLoad\na,Ada,9 kg\nb,Ada,9 kg\n",
                    "hiker,name,mass\nAda,Cup,1 oz\n,Mug,2 oz\n"))));
  }

  @Test
  void hikersWithoutATableOfKitsKeepTheirs() {
    Trip base =
        TableIssues.trip(
            """
            {"format": "faircarry-trip/1", "name": "n", "days": 1, "hikers": [
              {"id": "a", "targetLoad": "9 kg", "kit": [{"id": "mug", "mass": "1 g"}]},
              {"id": "b", "targetLoad": "9 kg"}]}
            """);
    Trip changed =
        TableIssues.value(
            TripTables.into(
                base,
                Map.of(Table.HIKERS, TableIssues.bytes("id,targetLoad\na,10 kg\nc,9 kg\n")),
                TripTables.Way.REPLACE));
    assertEquals(List.of("a", "c"), changed.hikers().stream().map(Hiker::id).toList());
    assertEquals("mug", changed.hikers().get(0).kit().get(0).id());
  }

  @Test
  void rowsAreAppendedBehindWhatIsThere() {
    TripTables.Way append = new TripTables.Way(true, Set.of(), Optional.empty());
    Trip once = TableIssues.of(Table.SHARED, "name,mass\nPot,1 g\n");
    Trip twice =
        TableIssues.value(
            TripTables.into(
                once, Map.of(Table.SHARED, TableIssues.bytes("name,mass\nPan,2 g\n")), append));
    assertEquals(List.of("s1", "s2"), twice.shared().stream().map(SharedItem::id).toList());
    assertEquals(
        List.of("duplicate-id @ shared, row 2, id"),
        TableIssues.codes(
            TableIssues.issues(
                TripTables.into(
                    once, Map.of(Table.SHARED, TableIssues.bytes("id,mass\ns1,2 g\n")), append))));
  }

  @Test
  void oneHikersKitChangesAlone() {
    Trip base =
        TableIssues.trip(
            """
            {"format": "faircarry-trip/1", "name": "n", "days": 1, "hikers": [
              {"id": "a", "targetLoad": "9 kg", "kit": [{"id": "mug", "mass": "1 g"}]},
              {"id": "b", "targetLoad": "9 kg", "kit": [{"id": "cup", "mass": "1 g"}]}]}
            """);
    TripTables.Way ofB = new TripTables.Way(false, Set.of(), Optional.of("b"));
    Trip changed =
        TableIssues.value(
            TripTables.into(
                base,
                Map.of(Table.KIT, TableIssues.bytes("hiker,id,mass\n,bowl,1 g\nb,pan,1 g\n")),
                ofB));
    assertEquals("mug", changed.hikers().get(0).kit().get(0).id());
    assertEquals(
        List.of("bowl", "pan"), changed.hikers().get(1).kit().stream().map(k -> k.id()).toList());
    assertEquals(
        List.of("conflicting-fields @ kit, row 2, hiker"),
        TableIssues.codes(
            TableIssues.issues(
                TripTables.into(
                    base,
                    Map.of(Table.KIT, TableIssues.bytes("hiker,id,mass\na,bowl,1 g\n")),
                    ofB))));
  }

  @Test
  void aHiddenBodyMassIsKeptWhereItsCellIsEmptyAndNeverStated() {
    Trip base =
        TableIssues.trip(
            """
            {"format": "faircarry-trip/1", "name": "n", "days": 1, "hikers": [
              {"id": "a", "bodyMass": "61.5 kg"}, {"id": "b", "bodyMass": "70 kg"}]}
            """);
    TripTables.Way seesB = new TripTables.Way(false, Set.of("a"), Optional.empty());
    Trip changed =
        TableIssues.value(
            TripTables.into(
                base,
                Map.of(Table.HIKERS, TableIssues.bytes("id,name,bodyMass\na,New,\nb,,71 kg\n")),
                seesB));
    assertEquals("61.5 kg", changed.hikers().get(0).bodyMass().orElseThrow().entered());
    assertEquals("New", changed.hikers().get(0).name());
    assertEquals("71 kg", changed.hikers().get(1).bodyMass().orElseThrow().entered());
    for (String stated : List.of("61.5 kg", "62 kg", "nonsense")) {
      assertEquals(
          new TableReading.StatesHidden<Trip>(),
          TripTables.into(
              base,
              Map.of(Table.HIKERS, TableIssues.bytes("id,bodyMass\na," + stated + "\nb,x\n")),
              seesB),
          stated);
    }
  }

  @Test
  void columnsAreToldThatAreMissingDoubleOrUnknown() {
    assertEquals(
        List.of(
            "unknown-field @ kit, row 1, Weight",
            "missing @ kit, row 1, hiker",
            "duplicate-field @ kit, row 1, mass"),
        TableIssues.codes(Table.KIT, "name,mass,mass,Weight\nCup,1 g,2 g,3 g\n"));
  }

  @Test
  void partsHaveRowsOfTheirOwn() {
    Trip trip =
        TableIssues.of(
            Table.SHARED,
            """
            id,part,name,mass,sleeps
            tarp,fly,Fly,700 g,
            tarp,,Big tarp,,2
            tarp,pegs,,60 g,
            net,a,,1 g,
            """);
    assertEquals(List.of("tarp", "net"), trip.shared().stream().map(SharedItem::id).toList());
    assertEquals(
        TableIssues.trip(
                """
                {"format": "faircarry-trip/1", "name": "Base", "days": 2,
                 "hikers": [{"id": "ada", "name": "Ada", "targetLoad": "12 kg"}],
                 "shared": [
                   {"id": "tarp", "name": "Big tarp", "sleeps": 2, "parts": [
                     {"id": "fly", "name": "Fly", "mass": "700 g"}, {"id": "pegs", "mass": "60 g"}]},
                   {"id": "net", "parts": [{"id": "a", "mass": "1 g"}]}]}
                """)
            .shared(),
        trip.shared());
    assertEquals(
        List.of(
            "conflicting-fields @ shared, row 2, mass",
            "conflicting-fields @ shared, row 3, sleeps",
            "duplicate-id @ shared, row 4, part",
            "missing @ shared, row 5, id"),
        TableIssues.codes(
            Table.SHARED,
            """
            id,part,name,mass,sleeps
            tarp,,Tarp,1 g,
            tarp,fly,Fly,700 g,2
            tarp,fly,Fly,1 g,
            ,pegs,,60 g,
            """));
  }

  @Test
  void whatCannotStandTogetherIsToldAtItsCell() {
    assertEquals(
        List.of(
            "conflicting-fields @ shared, row 2, perPersonDay",
            "conflicting-fields @ shared, row 3, containsKind",
            "conflicting-fields @ shared, row 3, containsVolume",
            "conflicting-fields @ shared, row 4, perDay",
            "missing @ shared, row 5, use",
            "missing @ shared, row 6, containsVolume",
            "leaves-too-much @ shared, row 7, leaves",
            "missing @ shared, row 8, perDay",
            "wrong-length @ shared, row 9, perDay"),
        TableIssues.codes(
            Table.SHARED,
            """
            name,mass,count,perPersonDay,use,perDay,leaves,containsKind,containsVolume
            a,1 g,1,1,,,,,
            b,1 g,2,,,,,food,1 L
            c,1 g,,,evenly,2,,,
            d,1 g,,,,,1 g,,
            e,1 g,,,,,,food,
            f,1 g,,,evenly,,2 g,,
            g,1 g,2,,units-per-day,,,,
            h,1 g,2,,units-per-day,1|1|1,,,
            """));
  }

  @Test
  void issuesOfTheRestOfTheTripKeepTheirPlaceThere() {
    Trip base =
        TableIssues.trip(
            """
            {"format": "faircarry-trip/1", "name": "n", "days": 1,
             "hikers": [{"id": "a", "targetLoad": "9 kg"}],
             "shared": [{"id": "pot", "mass": "1 g"}],
             "rules": [{"id": "r", "kind": "pinned", "pieces": ["pot"], "hiker": "a"}]}
            """);
    assertEquals(
        List.of("unknown-piece @ /rules/0/pieces/0"),
        TableIssues.codes(
            TableIssues.issues(
                TripTables.into(
                    base,
                    Map.of(Table.SHARED, TableIssues.bytes("id,mass\npan,1 g\n")),
                    TripTables.Way.REPLACE))));
  }

  @Test
  void aGroupOfNobodyIsToldOnce() {
    assertEquals(
        List.of("empty-group @ hikers"), TableIssues.codes(Table.HIKERS, "id,targetLoad\n\n,,\n"));
    assertEquals(List.of(), TableIssues.of(Table.SHARED, "id,mass\n").shared());
  }

  @Test
  void whatIsNoTableIsToldAsSuch() {
    assertEquals(List.of("not-csv @ hikers, row 1"), TableIssues.codes(Table.HIKERS, ""));
    assertEquals(List.of("not-csv @ hikers, row 1"), TableIssues.codes(Table.HIKERS, "\r\n,\r\n"));
    assertEquals(
        List.of("not-utf-8 @ hikers"),
        TableIssues.codes(
            TableIssues.of(Table.HIKERS, "name\nÜnal".getBytes(StandardCharsets.ISO_8859_1))));
    assertEquals(
        List.of("document-too-large @ hikers"),
        TableIssues.codes(TableIssues.of(Table.HIKERS, new byte[CsvLimits.BYTES + 1])));
    assertEquals(
        List.of("not-csv @ hikers, row 2"),
        TableIssues.codes(Table.HIKERS, "name\n" + ",".repeat(20_000) + "\n"));
  }

  @Test
  void aTableOfTwoMegabytesIsReadAndToldToItsLimits() {
    StringBuilder text = new StringBuilder("name,mass\n");
    while (text.length() < 1_990_000) {
      text.append("a thing with a name of many words to fill the table,").append("410 g\n");
    }
    List<String> codes = TableIssues.codes(Table.SHARED, text.toString());
    assertTrue(codes.contains("too-many @ shared, row 20002"), codes::toString);
  }

  /** 100,000 rows: the reading stops at the first row that is too many. */
  @Test
  void aHundredThousandShortRowsAreTooMany() {
    List<String> codes =
        TableIssues.codes(Table.KIT, "hiker,name,mass\n" + "ada,a,1 g\n".repeat(100_000));
    assertTrue(codes.contains("too-many @ kit, row 20002"), codes::toString);
    List<String> wrong =
        TableIssues.codes(Table.KIT, "hiker,name,mass\n" + "a,a,1\n".repeat(100_000));
    assertEquals(Limits.ISSUES, wrong.size());
    TableReading<Trip> reading =
        TableIssues.read(Table.KIT, "hiker,name,mass\n" + "a,a,1\n".repeat(300));
    assertTrue(((TableReading.Bad<Trip>) reading).more());
  }

  @Test
  void namesOfAnyScriptComeThrough() {
    Trip trip = TableIssues.of(Table.SHARED, "name;mass\nفلتر الماء;1 g\n水ろ過器 🏔;2 g\n");
    assertEquals(
        List.of("فلتر الماء", "水ろ過器 🏔"), trip.shared().stream().map(SharedItem::name).toList());
  }

  @Test
  void numbersASpreadsheetWroteWithACommaAreRead() {
    Hiker hiker =
        TableIssues.of(
                Table.HIKERS,
                "name;bodyMass;targetFraction;packMass;packCost\nAda;60 kg;0,20;1 kg;180,50\n")
            .hikers()
            .get(0);
    assertEquals("0.20", hiker.targetFraction().orElseThrow().entered().toPlainString());
    assertEquals("180.50", hiker.pack().orElseThrow().cost().orElseThrow().entered());
    assertEquals(
        List.of("not-a-quantity @ hikers, row 2, packMass"),
        TableIssues.codes(Table.HIKERS, "name;bodyMass;packMass\nAda;60 kg;1,050 kg\n"),
        "one kilogram or a thousand?");
  }
}
