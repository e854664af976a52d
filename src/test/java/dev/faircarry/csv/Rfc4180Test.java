package dev.faircarry.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** RFC 4180, section 2, point by point; the examples are those of the RFC where they fit. */
class Rfc4180Test {

  private static List<String> names(String text) {
    return TableIssues.of(Table.SHARED, text).shared().stream().map(SharedItem::name).toList();
  }

  /** 2.1: each record on a line of its own, delimited by a line break (CRLF); LF and CR are met. */
  @ParameterizedTest
  @ValueSource(strings = {"\r\n", "\n", "\r"})
  void eachRecordIsALine(String end) {
    assertEquals(
        List.of("aaa", "zzz"), names("name,mass" + end + "aaa,1 g" + end + "zzz,2 g" + end));
  }

  /** 2.2: the last record may or may not have an ending line break. */
  @Test
  void theLastLineNeedsNoEnd() {
    assertEquals(names("name,mass\r\naaa,1 g\r\n"), names("name,mass\r\naaa,1 g"));
  }

  /** 2.3: a header line with names; here it is needed, and says in which order the columns come. */
  @Test
  void theHeaderNamesTheColumns() {
    assertEquals(List.of("aaa"), names("mass,name\r\n1 g,aaa\r\n"));
    assertEquals(
        List.of(
            "unknown-field @ shared, row 1, aaa",
            "unknown-field @ shared, row 1, 1 g",
            "missing @ shared, row 1, name",
            "missing @ shared, row 1, mass"),
        TableIssues.codes(Table.SHARED, "aaa,1 g\r\nbbb,2 g\r\n"));
  }

  /** 2.4: spaces are part of a field. */
  @Test
  void spacesBelongToTheField() {
    assertEquals(List.of(" aaa "), names("name,mass\r\n aaa ,1 g\r\n"));
  }

  /** 2.4: each line should contain the same number of fields; what is short has empty ones. */
  @Test
  void aLineThatIsTooLongIsToldAndAShortOneIsFilledUp() {
    assertEquals(
        List.of("ragged-row @ shared, row 2"),
        TableIssues.codes(Table.SHARED, "name,mass\r\naaa,1 g,2 g\r\n"));
    assertEquals(List.of("aaa"), names("name,mass,volume\r\naaa,1 g\r\n"));
    assertEquals(List.of("aaa"), names("name,mass\r\naaa,1 g,,\r\n"), "empty cells are none");
  }

  /** 2.5: each field may or may not be enclosed in double quotes. */
  @Test
  void quotesAreFree() {
    assertEquals(List.of("aaa", "zzz"), names("name,mass\r\n\"aaa\",\"1 g\"\r\nzzz,\"2 g\"\r\n"));
  }

  /** 2.6: line breaks, double quotes and commas inside a field are enclosed in double quotes. */
  @Test
  void separatorsAndQuotesCanStandInAField() {
    assertEquals(
        List.of("b, bb", "c\"c;"), names("name,mass\r\n\"b, bb\",1 g\r\n\"c\"\"c;\",2 g\r\n"));
  }

  /** 2.6: a name may not hold a line break, but the row is read as one, and rows after it count. */
  @Test
  void aLineBreakInAFieldBeginsNoRow() {
    assertEquals(
        List.of("bad-text @ shared, row 2, name", "no-unit @ shared, row 3, mass"),
        TableIssues.codes(Table.SHARED, "name,mass\r\n\"b\r\nbb\",1 g\r\nccc,2\r\n"));
  }

  /** 2.7: a double quote inside a quoted field is written twice. */
  @Test
  void quotesInsideAreDoubled() {
    assertEquals(List.of("b\"bb"), names("name,mass\r\n\"b\"\"bb\",1 g\r\n"));
    assertEquals(
        List.of("not-csv @ shared, row 2"),
        TableIssues.codes(Table.SHARED, "name,mass\r\n\"b\"bb\",1 g\r\n"));
    assertEquals(
        List.of("not-csv @ shared, row 3"),
        TableIssues.codes(Table.SHARED, "name,mass\r\naaa,1 g\r\n\"bbb,1 g\r\n"));
  }

  /** What is written keeps all of it: CRLF, a header, quotes just where needed and doubled. */
  @Test
  void whatIsWrittenKeepsTheRules() {
    Trip trip =
        TableIssues.of(
            Table.SHARED, "name,id,mass\r\n\"Pot, \"\"large\"\"\",pot,410 g\r\nPan,pan,1 g\r\n");
    String written = new String(TableWriter.write(Table.SHARED, trip), StandardCharsets.UTF_8);
    String rest = ",".repeat(Table.SHARED.columns().size() - 4);
    assertEquals(
        String.join(",", Table.SHARED.columns())
            + "\r\npot,,\"Pot, \"\"large\"\"\",410 g"
            + rest
            + "\r\npan,,Pan,1 g"
            + rest
            + "\r\n",
        written);
    assertTrue(written.endsWith("\r\n"));
  }

  /**
   * A byte order mark is no part of the first name; RFC 4180 knows none, spreadsheets write one.
   */
  @Test
  void aByteOrderMarkIsPassedOver() {
    assertEquals(List.of("aaa"), names("\uFEFFname,mass\r\naaa,1 g\r\n"));
    assertEquals(List.of("aaa"), names("\uFEFF\"name\",mass\r\naaa,1 g\r\n"));
  }

  /** Where the comma is the decimal sign, spreadsheets separate by semicolons. */
  @Test
  void semicolonsSeparateWhereTheHeaderHasThem() {
    assertEquals(List.of("b, bb", "c;c"), names("name;mass\r\nb, bb;1 g\r\n\"c;c\";2 g\r\n"));
    assertEquals(
        "ada,x",
        TableIssues.of(Table.HIKERS, "name;targetLoad;targetFraction\r\nada,x;9 kg;0,20\r\n")
            .hikers()
            .get(0)
            .name());
  }
}
