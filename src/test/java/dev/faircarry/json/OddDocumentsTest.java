package dev.faircarry.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.Issue;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.Trip;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bodies that are hardly trips. */
class OddDocumentsTest {
  private static final String SMALL =
      """
      {"format": "faircarry-trip/1", "name": "N", "days": 1,
       "hikers": [{"id": "a", "targetLoad": "9 kg"}]%s}
      """;

  private static List<String> codes(String document) {
    return Documents.codes(Documents.issues(document));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " \n\t",
        "{",
        "}",
        "{]",
        "{\"name\"}",
        "nul",
        "NaN",
        "{\"days\": NaN}",
        "{\"days\": Infinity}",
        "{\"days\": +1}",
        "{\"days\": 01}",
        "{\"days\": .5}",
        "{\"days\": 1.}",
        "{'days': 1}",
        "{days: 1}",
        "{\"days\": 1,}",
        "[1,]",
        "// c\n{}",
        "{} {}",
        "{}x",
        "{\"name\": \"a\nb\"}",
        "{\"name\": \"\\x\"}",
        "{\"name\": \"\\u12\"}",
        "\"open",
        "\u0000",
        "\uFEFF",
        "\uFEFF\uFEFF{}",
        "{\"a\" \"b\"}",
        "=cmd()"
      })
  void notJson(String document) {
    List<Issue> issues = Documents.issues(document);
    assertEquals(List.of("not-json "), Documents.codes(issues));
    assertEquals("", issues.get(0).value());
    assertFalse(issues.get(0).message().contains("com.fasterxml"), issues.get(0).message());
  }

  @ParameterizedTest
  @ValueSource(strings = {"null", "[]", "\"x\"", "7", "true", "[[{}]]", "-0.0", "1e308", "1e-400"})
  void noObject(String document) {
    assertEquals(List.of("wrong-type "), codes(document));
  }

  @Test
  void emptyObjectLacksEverythingNeeded() {
    assertEquals(
        List.of("missing /days", "missing /format", "missing /hikers", "missing /name"),
        codes("{}"));
  }

  @ParameterizedTest
  @ValueSource(ints = {33, 200, 20_000, 900_000})
  void deepNesting(int levels) {
    for (String open : List.of("[", "{\"a\":", "[{\"a\":")) {
      String document = open.repeat(levels);
      if (document.length() <= Limits.DOCUMENT_BYTES) {
        assertEquals(List.of("too-deep "), codes(document), open);
      }
    }
  }

  @Test
  void nestingUpToTheLimitIsRead() {
    String deep = "[".repeat(Limits.NESTING - 1) + "]".repeat(Limits.NESTING - 1);
    assertEquals(List.of("unknown-field /x"), codes(SMALL.formatted(", \"x\": " + deep)));
    assertEquals(List.of("too-deep "), codes(SMALL.formatted(", \"x\": [" + deep + "]")));
  }

  @Test
  void tenMegabytes() {
    byte[] large = new byte[10_000_000];
    Arrays.fill(large, (byte) '[');
    assertEquals(
        List.of("document-too-large "), Documents.codes(Documents.issues(TripReader.read(large))));
  }

  @Test
  void spacesUpToTheLimitAreRead() {
    byte[] trip = bytes(SMALL.formatted(""));
    byte[] padded = Arrays.copyOf(trip, Limits.DOCUMENT_BYTES);
    Arrays.fill(padded, trip.length, padded.length, (byte) ' ');
    assertEquals(Documents.trip(trip), Documents.trip(padded));
  }

  @Test
  void byteOrderMarkIsTolerated() {
    Trip plain = Documents.trip(SMALL.formatted(""));
    assertEquals(plain, Documents.trip("\uFEFF" + SMALL.formatted("")));
  }

  /** RFC 3629: overlong forms, surrogates, stray and missing bytes, too large code points. */
  @ParameterizedTest
  @ValueSource(strings = {"ff", "c080", "eda080", "80", "e282", "f4908080", "f8", "fffe6e00"})
  void notUtf8(String hex) {
    byte[] odd = new byte[hex.length() / 2];
    for (int i = 0; i < odd.length; i++) {
      odd[i] = (byte) Integer.parseInt(hex.substring(2 * i, 2 * i + 2), 16);
    }
    byte[] head = bytes("{\"name\": \"");
    byte[] document = Arrays.copyOf(head, head.length + odd.length);
    System.arraycopy(odd, 0, document, head.length, odd.length);
    List<Issue> issues = Documents.issues(TripReader.read(document));
    assertEquals(List.of("not-utf-8 "), Documents.codes(issues));
    assertTrue(issues.get(0).message().startsWith("Byte 11 "), issues.get(0).message());
  }

  @Test
  void everyDuplicateFieldIsNamed() {
    assertEquals(
        List.of("duplicate-field /hikers/0/id", "duplicate-field /name"),
        codes(
            """
            {"format": "faircarry-trip/1", "name": "N", "days": 1, "name": "M",
             "hikers": [{"id": "a", "targetLoad": "9 kg", "id": "a"}]}
            """));
  }

  @ParameterizedTest
  @CsvSource({
    "1e308, out-of-range /days",
    "1e-400, wrong-type /days",
    "1e2147483647, out-of-range /days",
    "1e99999999999, out-of-range /days",
    "-1e-99999999999, out-of-range /days",
    "99999999999999999999999999999999999999999999999999999999999999, out-of-range /days",
    "0.000000000000000000000000000000000000000000000000000000000000001, out-of-range /days",
    "-1, out-of-range /days",
    "1.5, wrong-type /days",
    "2147483648, out-of-range /days",
    "999999999, out-of-range /days",
    "null, wrong-type /days",
    "'\"1\"', wrong-type /days"
  })
  void days(String days, String expected) {
    assertEquals(
        List.of(expected), codes(SMALL.formatted("").replace("\"days\": 1", "\"days\": " + days)));
  }

  @Test
  void wholeNumbersMayBeWrittenWithAPoint() {
    Trip trip = Documents.trip(SMALL.formatted("").replace("\"days\": 1", "\"days\": 1.0e1"));
    assertEquals(10, trip.days());
  }

  @Test
  void idsAndNames() {
    for (String id : List.of("a/b", "é", "a b", ".", "..", "-a", "a%2F", "<i>", "a\\u0000")) {
      assertEquals(
          List.of("bad-id /hikers/0/id"),
          codes(SMALL.formatted("").replace("\"a\"", "\"" + id + "\"")),
          id);
    }
    String longest = "a".repeat(Limits.ID_LENGTH);
    assertEquals(List.of(), codes(SMALL.formatted("").replace("\"a\"", "\"" + longest + "\"")));
    assertEquals(
        List.of("text-too-long /hikers/0/id"),
        codes(SMALL.formatted("").replace("\"a\"", "\"" + longest + "a\"")));
    for (String name : List.of("\\ud800", "a\\udc00b", "\\u0007", "a\\u2028", "a\\u0085")) {
      assertEquals(
          List.of("bad-text /name"),
          codes(SMALL.formatted("").replace("\"N\"", "\"" + name + "\"")),
          name);
    }
    // Counted in characters as people see them on a keyboard, not in halves of them.
    String mountains = "🏔".repeat(Limits.NAME_LENGTH);
    assertEquals(List.of(), codes(SMALL.formatted("").replace("\"N\"", "\"" + mountains + "\"")));
  }

  @Test
  void halfCharactersNeverReachTheAnswer() {
    List<Issue> issues =
        Documents.issues(SMALL.formatted(", \"\\ud800\": 1, \"rules\": [{\"kind\": \"\\udfff\"}]"));
    assertEquals(
        List.of("unknown-word", "unknown-field"),
        issues.stream().map(i -> i.code().text()).toList());
    for (Issue issue : issues) {
      String all = issue.toString();
      assertEquals(all, new String(bytes(all), StandardCharsets.UTF_8));
    }
  }

  @Test
  void fieldNamesAreEscapedInPointers() {
    assertEquals(
        List.of("unknown-field /", "unknown-field /a~1b~0c"),
        codes(SMALL.formatted(", \"\": 1, \"a/b~c\": {\"deep\": {\"deeper\": 1}}")));
  }

  @Test
  void longFieldNameStopsTheReading() {
    String name = "n".repeat(100_000);
    List<Issue> issues = Documents.issues(SMALL.formatted(", \"" + name + "\": 1"));
    assertEquals(List.of("text-too-long "), Documents.codes(issues));
  }

  @Test
  void longValuesAreShortened() {
    String word = "w".repeat(1_000_000);
    Issue issue =
        Documents.issues(SMALL.formatted(", \"rules\": [{\"kind\": \"" + word + "\"}]")).get(0);
    assertEquals("w".repeat(60) + "…", issue.value());
    assertTrue(issue.message().length() < 300, "message of " + issue.message().length());
  }

  @Test
  void entryTenComesAfterEntryNine() {
    String hikers = "{\"targetLoad\": \"9 kg\"},".repeat(11);
    List<String> codes =
        codes(
            "{\"format\": \"faircarry-trip/1\", \"name\": \"N\", \"days\": 1, \"hikers\": ["
                + hikers.substring(0, hikers.length() - 1)
                + "]}");
    assertEquals(11, codes.size());
    assertEquals("missing /hikers/2/name", codes.get(2));
    assertEquals("missing /hikers/9/name", codes.get(9));
    assertEquals("missing /hikers/10/name", codes.get(10));
  }

  @Test
  void issuesUpToTheLimitAreAllListed() {
    String kit = "0,".repeat(Limits.KIT_ITEMS_PER_HIKER - 1) + "0";
    String hiker = "{\"id\": \"a\", \"targetLoad\": \"9 kg\", \"kit\": [" + kit + "]}";
    String head = "{\"format\": \"faircarry-trip/1\", \"name\": \"N\", \"days\": 1, \"hikers\": [";
    Reading.Bad<Trip> all = (Reading.Bad<Trip>) TripReader.read(bytes(head + hiker + "]}"));
    assertEquals(Limits.ISSUES, all.issues().size());
    assertFalse(all.more());
    Reading.Bad<Trip> more = (Reading.Bad<Trip>) TripReader.read(bytes(head + hiker + ", 0]}"));
    assertEquals(Limits.ISSUES, more.issues().size());
    assertTrue(more.more());
  }

  @Test
  void noMoreIssuesThanTheLimitAreListed() {
    Reading.Bad<Trip> bad =
        (Reading.Bad<Trip>) TripReader.read(bytes("{\"hikers\": [" + "0,".repeat(900_000) + "0]}"));
    // 3 missing fields, 1 list too long, 100 hikers that are none
    assertEquals(104, bad.issues().size());
    assertFalse(bad.more());
    String kit = "{\"kit\": [" + "0,".repeat(199) + "0]},";
    Reading.Bad<Trip> many =
        (Reading.Bad<Trip>) TripReader.read(bytes("{\"hikers\": [" + kit.repeat(99) + "0]}"));
    assertEquals(Limits.ISSUES, many.issues().size());
    assertTrue(many.more());
  }
}
