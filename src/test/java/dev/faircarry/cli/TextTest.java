package dev.faircarry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextTest {
  @Test
  void columnsAreAligned() {
    assertEquals(
        "a    1.50\nbcd     7\n",
        new Text().table(List.of(List.of("a", "1.50"), List.of("bcd", "7"))).toString());
  }

  @Test
  void wideAndCombiningCharactersTakeTheirColumns() {
    // Unicode: Han characters are wide, U+0301 combines with the letter before it.
    assertEquals(4, Text.columns("山田"));
    assertEquals(1, Text.columns("e\u0301"));
    assertEquals(4, Text.columns("שלום"));
    assertEquals(
        "山  1\nab  2\n",
        new Text().table(List.of(List.of("山", "1"), List.of("ab", "2"))).toString());
  }

  @Test
  void longTextsAreWrappedBelowTheirBeginning() {
    String text = new Text().wrapped("Ada: ", "word ".repeat(40).strip()).toString();
    List<String> lines = text.lines().toList();
    assertTrue(lines.size() > 1);
    assertTrue(lines.get(0).startsWith("Ada: word"));
    assertTrue(lines.get(1).startsWith("     word"));
    lines.forEach(line -> assertTrue(line.length() <= 88, line));
    assertEquals(40, text.split("word", -1).length - 1);
  }

  @Test
  void aWordThatIsTooLongStandsByItself() {
    String word = "x".repeat(100);
    assertEquals("- a\n  " + word + "\n", new Text().wrapped("- ", "a " + word).toString());
  }
}
