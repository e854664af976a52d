package dev.faircarry.json;

import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.weigh.ScaleReading;

/** One reading as a text of its own, for whoever keeps it. */
public final class ScaleText {
  private ScaleText() {}

  public static byte[] write(ScaleReading reading) {
    return JsonBytes.of(WeighInWriter.reading(reading));
  }

  /**
   * Reads what {@link #write} wrote.
   *
   * @throws IllegalStateException if it is something else
   */
  public static ScaleReading read(byte[] text) {
    Issues issues = new Issues();
    return JsonText.read(text, issues)
        .flatMap(root -> Entry.of(root, Pointer.ROOT, issues))
        .flatMap(ScaleReader::reading)
        .filter(reading -> issues.list().isEmpty())
        .orElseThrow(() -> new IllegalStateException("a stored reading cannot be read"));
  }
}
