package dev.faircarry.json;

import static org.junit.jupiter.api.Assertions.fail;

import dev.faircarry.check.Issue;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Documents of tests, read as they should be. */
public final class Documents {
  private Documents() {}

  static byte[] resource(String path) {
    try (InputStream in = Documents.class.getResourceAsStream(path)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new AssertionError(path, e);
    }
  }

  static Trip trip(String document) {
    return trip(document.getBytes(StandardCharsets.UTF_8));
  }

  static Trip trip(byte[] document) {
    return value(TripReader.read(document));
  }

  static <T> T value(Reading<T> reading) {
    if (reading instanceof Reading.Bad<T> bad) {
      return fail(bad.issues().toString());
    }
    return ((Reading.Read<T>) reading).value();
  }

  static List<Issue> issues(String document) {
    return issues(TripReader.read(document.getBytes(StandardCharsets.UTF_8)));
  }

  static <T> List<Issue> issues(Reading<T> reading) {
    return reading instanceof Reading.Bad<T> bad ? bad.issues() : List.of();
  }

  /** Code and place of each issue: {@code "missing /days"}. */
  static List<String> codes(List<Issue> issues) {
    return issues.stream().map(i -> i.code().text() + " " + i.pointer()).toList();
  }

  /** Changes as a request states them. */
  public static String changes(List<Change> changes) {
    return ChangeWriter.list(changes).toString();
  }
}
