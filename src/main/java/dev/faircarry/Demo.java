package dev.faircarry;

import dev.faircarry.access.Role;
import dev.faircarry.app.CannotOpen;
import dev.faircarry.app.ChangeResult;
import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.SplitResult;
import dev.faircarry.app.SplitTrip;
import dev.faircarry.app.Visit;
import dev.faircarry.cli.HandedLink;
import dev.faircarry.json.Reading;
import dev.faircarry.json.TripReader;
import dev.faircarry.store.Seal;
import dev.faircarry.store.Stores;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Trip;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** A made-up trip to try, in a directory of its own that is erased in the end. */
final class Demo {
  private static final Logger LOG = LoggerFactory.getLogger(Demo.class);
  private static final String TRIP = "/demo-data/high-tarns.json";

  /** Enough for this trip: its highest level is proved and it is ready within a second or so. */
  private static final long EFFORT_STEPS = 2_000_000;

  private Demo() {}

  /**
   * Makes the directory, sealed with a key that is nowhere but in memory, and in it the trip with a
   * split that is agreed on; and links for the leader, for each hiker, and to look on.
   *
   * @throws CannotOpen if nothing can be written where temporary files go
   */
  static Kept open(SplitTrip splitTrip, Optional<String> creationKey, Closing closing) {
    try {
      Path directory = Files.createTempDirectory("faircarry-demo-");
      closing.add(() -> erase(directory));
      Seal seal = Seal.ofKeyset(Seal.newKeyset());
      Keeping keeping =
          Keeping.of(Stores.sqlite(directory.resolve("trips.db"), seal), splitTrip, creationKey);
      closing.add(keeping::close);
      return new Kept(keeping.parts(), made(keeping.parts().trips(), splitTrip));
    } catch (IOException e) {
      throw new CannotOpen(
          "demo-directory", "Nothing can be written to the directory for temporary files.", e);
    }
  }

  private static List<HandedLink> made(KeptTrips trips, SplitTrip splitTrip) {
    Trip trip = trip();
    KeptTrips.Issued leader = trips.create(trip, "demo").orElseThrow();
    String id = leader.link().trip();
    Visit visit = trips.enter(id, Optional.of(leader.token().text())).orElseThrow();
    if (splitTrip.split(trip, EFFORT_STEPS) instanceof SplitResult.Found found) {
      String split = trips.addSplit(visit, found.split(), Optional.of(found.proof()));
      ChangeResult agreed = trips.agree(visit, visit.stored().head(), Optional.of(split));
      LOG.debug("demo agreed on: {}", agreed instanceof ChangeResult.Kept);
    }
    List<HandedLink> links = new ArrayList<>();
    links.add(link("Leader", leader));
    for (Hiker hiker : trip.hikers()) {
      links.add(
          link(
              hiker.name(),
              trips.issue(id, Role.HIKER, Optional.of(hiker.id()), Optional.empty())));
    }
    links.add(link("Viewer", trips.issue(id, Role.VIEWER, Optional.empty(), Optional.empty())));
    return List.copyOf(links);
  }

  private static HandedLink link(String whose, KeptTrips.Issued issued) {
    return new HandedLink(whose, "/#/open/" + issued.link().trip() + "/" + issued.token().text());
  }

  private static Trip trip() {
    try (InputStream in = Demo.class.getResourceAsStream(TRIP)) {
      if (in != null && TripReader.read(in.readAllBytes()) instanceof Reading.Read<Trip> read) {
        return read.value();
      }
    } catch (IOException e) {
      throw new IllegalStateException("cannot read the demo trip", e);
    }
    throw new IllegalStateException("the program lacks its demo trip");
  }

  private static void erase(Path directory) {
    try (Stream<Path> files = Files.walk(directory)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      LOG.warn("a directory for temporary files could not be erased");
    }
  }
}
