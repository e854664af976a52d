package dev.faircarry.json;

import dev.faircarry.check.IssueCode;
import dev.faircarry.trip.Limits;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** For each code a smallest trip document, or table, that has just this issue. */
public final class IssueSamples {
  private static final int SHOWN_CHARACTERS = 2_000;

  private IssueSamples() {}

  /** Whether the sample of a code is a table of shared things, in place of a trip document. */
  public static boolean isTable(IssueCode code) {
    return code == IssueCode.NOT_CSV || code == IssueCode.RAGGED_ROW;
  }

  /** The sample of a code, as bytes: one of them is not even text. */
  public static byte[] of(IssueCode code) {
    String path = "/issue-samples/" + code.text() + (isTable(code) ? ".csv" : ".json");
    try (InputStream in = IssueSamples.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("no sample " + path);
      }
      byte[] sample = in.readAllBytes();
      return code == IssueCode.DOCUMENT_TOO_LARGE ? padded(sample) : sample;
    } catch (IOException e) {
      throw new IllegalStateException("cannot read sample " + path, e);
    }
  }

  /**
   * The sample of a code as text to show: what is no text has the replacement character (U+FFFD),
   * and of what is too long only the beginning stands there, with an ellipsis.
   */
  public static String shown(IssueCode code) {
    String text = new String(of(code), StandardCharsets.UTF_8).strip();
    return text.length() <= SHOWN_CHARACTERS ? text : text.substring(0, SHOWN_CHARACTERS) + " …";
  }

  /** Spaces to one byte more than is read: nobody wants that in a file. */
  private static byte[] padded(byte[] sample) {
    byte[] padded = Arrays.copyOf(sample, Limits.DOCUMENT_BYTES + 1);
    Arrays.fill(padded, sample.length, padded.length, (byte) ' ');
    return padded;
  }
}
