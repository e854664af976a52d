package dev.faircarry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Whoever opens the project sees these files and folders, and finds everything else below them. */
class TopLevelTest {
  private static final Set<String> THERE =
      Set.of("pom.xml", "README.md", "DEVELOPERS.md", "LICENSE", "src", "openapi", "demo-data");

  @Test
  void nothingElseLiesAtTheTop() throws IOException {
    try (var entries = Files.list(Path.of("").toAbsolutePath())) {
      Set<String> seen =
          entries
              .map(entry -> entry.getFileName().toString())
              .filter(name -> !name.startsWith(".") && !name.equals("target"))
              .collect(Collectors.toSet());
      assertEquals(THERE, seen);
    }
  }
}
