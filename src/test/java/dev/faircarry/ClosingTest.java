package dev.faircarry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is opened is closed once, the last first, however late it comes. */
class ClosingTest {
  private final List<String> closed = new ArrayList<>();
  private final Closing closing = new Closing();

  @Test
  void theLastIsClosedFirstAndEachOnce() {
    closing.add(() -> closed.add("directory"));
    closing.add(() -> closed.add("store"));
    closing.close();
    closing.close();
    assertEquals(List.of("store", "directory"), closed);
  }

  @Test
  void whatComesTooLateIsClosedAtOnce() {
    closing.close();
    closing.add(() -> closed.add("store"));
    assertEquals(List.of("store"), closed);
  }
}
