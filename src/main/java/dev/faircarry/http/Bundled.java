package dev.faircarry.http;

import java.io.IOException;
import java.io.InputStream;

/** Files that travel inside the program. */
final class Bundled {
  private Bundled() {}

  /**
   * The bytes of a file.
   *
   * @throws IllegalStateException when the program was built without it
   */
  static byte[] file(String path) {
    try (InputStream in = Bundled.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks " + path);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new IllegalStateException("cannot read " + path, e);
    }
  }
}
