package dev.faircarry.json;

import dev.faircarry.check.IssueCode;
import dev.faircarry.trip.Limits;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;

/** For each code a smallest trip document that has just this issue. */
public final class IssueSamples {
  private IssueSamples() {}

  /** The sample of a code, as bytes: one of them is not even text. */
  public static byte[] of(IssueCode code) {
    String path = "/issue-samples/" + code.text() + ".json";
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

  /** Spaces to one byte more than is read: nobody wants that in a file. */
  private static byte[] padded(byte[] sample) {
    byte[] padded = Arrays.copyOf(sample, Limits.DOCUMENT_BYTES + 1);
    Arrays.fill(padded, sample.length, padded.length, (byte) ' ');
    return padded;
  }
}
