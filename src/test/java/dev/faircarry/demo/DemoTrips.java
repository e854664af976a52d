package dev.faircarry.demo;

import dev.faircarry.json.Reading;
import dev.faircarry.json.TripReader;
import dev.faircarry.trip.Trip;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The demo trips, as files and as trips. */
public final class DemoTrips {
  private static final Path FOLDER = Path.of("demo-data");

  private DemoTrips() {}

  /** Names without folder and ending, in order. */
  public static List<String> names() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".json"))
          .map(name -> name.substring(0, name.length() - ".json".length()))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The file of a demo trip. */
  public static Path file(String name) {
    return FOLDER.resolve(name + ".json");
  }

  /** The bytes of a demo trip. */
  public static byte[] bytes(String name) {
    try {
      return Files.readAllBytes(file(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A demo trip, read. */
  public static Trip trip(String name) {
    Reading<Trip> reading = TripReader.read(bytes(name));
    if (reading instanceof Reading.Bad<Trip> bad) {
      throw new AssertionError(name + ": " + bad.issues());
    }
    return ((Reading.Read<Trip>) reading).value();
  }
}
