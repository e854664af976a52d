package dev.faircarry.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** OWASP, CSV Injection: no cell may begin with a sign that a spreadsheet reads as a formula. */
class FormulasTest {

  @ParameterizedTest
  @ValueSource(
      strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "＝1", "＋1", "－1", "＠x"})
  void aCellThatBeginsAFormulaGetsAnApostrophe(String cell) {
    assertEquals('\'', Formulas.guarded(cell).charAt(0), cell);
    assertEquals(cell, Formulas.restored(Formulas.guarded(cell)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '"',
      value = {"Pot~Pot", "a=b~a=b", "'tis~'tis", "x-y~x-y", "5 °C - cold~5 °C - cold", "'~'"})
  void otherCellsStayAsTheyAre(String cell, String written) {
    assertEquals(written, Formulas.guarded(cell));
    assertEquals(cell, Formulas.restored(written));
  }

  @Test
  void anApostropheThatIsThereAlreadyIsKept() {
    assertEquals("''=1", Formulas.guarded("'=1"));
    assertEquals("'=1", Formulas.restored("''=1"));
    assertEquals("=1", Formulas.restored("'=1"), "typed by hand");
  }

  /** A program that splits at another separator than was meant finds no formula either. */
  @Test
  void whatStandsBehindASeparatorInsideACellIsGuardedToo() {
    assertEquals("a;'=1", Formulas.guarded("a;=1"));
    assertEquals("a,'@x\n'-1", Formulas.guarded("a,@x\n-1"));
    assertEquals("a;=1", Formulas.restored("a;'=1"));
  }

  @Test
  void writtenAndReadIsTheSameForAnyCell() {
    String signs = "=+-@\t\r\n'',;ax ＝＠\"";
    for (long seed = 0; seed < 2_000; seed++) {
      Random random = new Random(seed);
      StringBuilder cell = new StringBuilder();
      for (int i = random.nextInt(12); i > 0; i--) {
        cell.append(signs.charAt(random.nextInt(signs.length())));
      }
      String written = Formulas.guarded(cell.toString());
      assertEquals(cell.toString(), Formulas.restored(written), "seed " + seed);
      for (String part : written.split("[,;\n]", -1)) {
        assertFalse(part.matches("(?s)[=+\\-@\\t\\r＝＠].*"), "seed " + seed + ": " + written);
      }
    }
  }
}
