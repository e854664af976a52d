package dev.faircarry.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Reads the documents named on the command line. */
final class Documents {
  static final String STANDARD_INPUT = "-";

  private final InputStream standardInput;

  Documents(InputStream standardInput) {
    this.standardInput = standardInput;
  }

  /**
   * The bytes of a file, or of standard input for {@code -}, not many more than are ever read.
   *
   * @throws BadInput when there is no such file
   */
  byte[] read(String name, int most) {
    try {
      if (name.equals(STANDARD_INPUT)) {
        return standardInput.readNBytes(most + 1);
      }
      try (InputStream in = Files.newInputStream(Path.of(name))) {
        return in.readNBytes(most + 1);
      }
    } catch (IOException | InvalidPathException e) {
      throw new BadInput("Cannot read " + name + ".");
    }
  }
}
