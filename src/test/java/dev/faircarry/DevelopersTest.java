package dev.faircarry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What DEVELOPERS.md says about tests holds. */
class DevelopersTest {
  private static final Pattern NAMED = Pattern.compile("`(?:[a-z]+\\.)?([A-Z][A-Za-z]*Test)`");

  @Test
  void everyTestThatIsNamedExists() throws IOException {
    String text = Files.readString(Path.of("DEVELOPERS.md"));
    Set<String> named = new TreeSet<>();
    for (Matcher name = NAMED.matcher(text); name.find(); ) {
      named.add(name.group(1));
    }
    assertTrue(named.size() > 15, named::toString);
    named.removeAll(tests());
    assertEquals(Set.of(), named);
  }

  /** Every item of the list has a test beside it. */
  @Test
  void everyItemOfTheSecurityListHasATest() throws IOException {
    String text = Files.readString(Path.of("DEVELOPERS.md"));
    for (int item = 1; item <= 10; item++) {
      String name = "API" + item + ":2023";
      String row =
          text.lines()
              .filter(line -> line.startsWith("| " + name + " "))
              .findFirst()
              .orElseThrow(() -> new AssertionError(name + " is missing"));
      assertTrue(NAMED.matcher(row).find(), row);
    }
  }

  private static Set<String> tests() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith("Test.java"))
          .map(name -> name.substring(0, name.length() - ".java".length()))
          .collect(Collectors.toSet());
    }
  }
}
