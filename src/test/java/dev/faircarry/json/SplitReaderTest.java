package dev.faircarry.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.faircarry.split.CampHandover;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Opened;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Splits as people write them, and as the service writes them. */
class SplitReaderTest {
  private static final String FULL =
      """
      {"format": "faircarry-split/1",
       "carries": [
         {"hiker": "asha", "pieces": ["filter", "shelter/fly", {"piece": "dinner", "units": 5}]},
         {"hiker": "tomas", "pieces": [{"piece": "gas"}]},
         {"hiker": "ruth", "pieces": []}],
       "opened": [{"day": 1, "piece": "dinner", "hiker": "asha", "units": 2}],
       "handoversAtCamp": [
         {"afterDay": 2, "from": "tomas", "to": "ruth", "piece": "gas"},
         {"afterDay": 2, "from": "tomas", "to": "asha", "piece": "dinner", "units": 3}]}
      """;

  private static Reading<Split> read(String document) {
    return SplitReader.read(document.getBytes(StandardCharsets.UTF_8));
  }

  private static List<String> codes(String document) {
    return Documents.codes(Documents.issues(read(document)));
  }

  private static String withCarries(String carries) {
    return "{\"format\": \"faircarry-split/1\", \"carries\": " + carries + "}";
  }

  @Test
  void everyField() {
    assertEquals(
        new Split(
            List.of(
                new Carry("asha", PieceRef.item("filter"), 1),
                new Carry("asha", PieceRef.part("shelter", "fly"), 1),
                new Carry("asha", PieceRef.item("dinner"), 5),
                new Carry("tomas", PieceRef.item("gas"), 1)),
            List.of(new Opened(1, "dinner", "asha", 2)),
            List.of(
                new CampHandover(2, "tomas", "ruth", PieceRef.item("gas"), 1),
                new CampHandover(2, "tomas", "asha", PieceRef.item("dinner"), 3))),
        Documents.value(read(FULL)));
  }

  @Test
  void openingPlanAndHandoversMayBeLeftOut() {
    assertEquals(
        new Split(List.of(), List.of(), List.of()), Documents.value(read(withCarries("[]"))));
  }

  @Test
  void whatIsWrittenReadsTheSame() {
    Split split = Documents.value(read(FULL));
    assertEquals(split, Documents.value(SplitReader.read(SplitWriter.write(split))));
  }

  @Test
  void computedFieldsArePassedOverAndOthersAreNot() {
    String computed =
        SplitFields.OF_SPLIT.stream()
            .map(f -> "\"" + f + "\": [{}], ")
            .collect(Collectors.joining());
    assertEquals(List.of(), codes("{" + computed + withCarries("[]").substring(1)));
    assertEquals(
        List.of("unknown-field /carries/0/mass", "unknown-field /weights"),
        codes(
            "{\"weights\": 1, "
                + withCarries("[{\"hiker\": \"a\", \"pieces\": [], \"mass\": 3}]").substring(1)));
  }

  @Test
  void faultsAreNamedAllAtOnce() {
    assertEquals(
        List.of(
            "missing /carries/0/hiker",
            "wrong-type /carries/0/pieces/0",
            "bad-id /carries/0/pieces/1",
            "out-of-range /carries/0/pieces/2/units",
            "duplicate-name /carries/1/pieces/1",
            "duplicate-name /carries/2/hiker",
            "missing /carries/2/pieces",
            "missing /format",
            "out-of-range /handoversAtCamp/0/afterDay",
            "bad-id /handoversAtCamp/0/to",
            "wrong-type /opened"),
        codes(
            """
            {"carries": [
               {"pieces": [7, "a/b/c", {"piece": "x", "units": 0}]},
               {"hiker": "a", "pieces": ["x", "x"]},
               {"hiker": "a"}],
             "opened": 1,
             "handoversAtCamp": [{"afterDay": 31, "from": "a", "to": "b c", "piece": "x"}]}
            """));
  }

  @Test
  void unknownFieldsAreNamedEverywhere() {
    assertEquals(
        List.of(
            "unknown-field /carries/0/pieces/0/mass",
            "unknown-field /handoversAtCamp/0/mass",
            "unknown-field /opened/0/mass"),
        codes(
            """
            {"format": "faircarry-split/1",
             "carries": [{"hiker": "a", "pieces": [{"piece": "x", "mass": 1}]}],
             "opened": [{"day": 1, "piece": "x", "hiker": "a", "units": 1, "mass": 1}],
             "handoversAtCamp": [{"afterDay": 1, "from": "a", "to": "b", "piece": "x", "mass": 1}]}
            """));
  }

  @Test
  void numbersHaveTheirLimits() {
    String opened =
        "{\"format\": \"faircarry-split/1\", \"carries\": [],"
            + " \"opened\": [{\"day\": %d, \"piece\": \"x\", \"hiker\": \"a\", \"units\": %d}]}";
    assertEquals(List.of(), codes(opened.formatted(1, 1)));
    assertEquals(List.of(), codes(opened.formatted(30, 1000)));
    assertEquals(
        List.of("out-of-range /opened/0/day", "out-of-range /opened/0/units"),
        codes(opened.formatted(0, 0)));
    assertEquals(
        List.of("out-of-range /opened/0/day", "out-of-range /opened/0/units"),
        codes(opened.formatted(31, 1001)));
  }

  @Test
  void idsHaveTheirLength() {
    String longest = "i".repeat(40);
    String pieces = "[{\"hiker\": \"a\", \"pieces\": [\"%s\"]}]";
    assertEquals(List.of(), codes(withCarries(pieces.formatted(longest + "/" + longest))));
    assertEquals(
        List.of("text-too-long /carries/0/pieces/0"),
        codes(withCarries(pieces.formatted(longest + "/i" + longest))));
    assertEquals(
        List.of("empty-text /carries/0/pieces/0"), codes(withCarries(pieces.formatted("x/"))));
  }

  @Test
  void moreHikersThanATripCanHaveAreRefused() {
    String carries =
        IntStream.rangeClosed(1, 101)
            .mapToObj(i -> "{\"hiker\": \"h" + i + "\", \"pieces\": []}")
            .collect(Collectors.joining(",", "[", "]"));
    assertEquals(List.of("too-many /carries"), codes(withCarries(carries)));
  }

  @Test
  void aTripIsNoSplit() {
    assertEquals(
        List.of("missing /carries", "unknown-field /days", "unknown-format /format"),
        codes("{\"format\": \"faircarry-trip/1\", \"days\": 2}"));
  }
}
