package dev.faircarry.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.demo.Walk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The walk with a trip that is kept, run as it stands. Its numbers are worked out where the other
 * walk is tested; what is kept gives the same.
 */
class StoredWalkScriptTest {
  private static final String SCRIPT = "walk-stored.sh";

  @TempDir private Path directory;
  private Optional<KeptService> service = Optional.empty();

  @AfterEach
  void end() {
    service.ifPresent(KeptService::close);
  }

  private KeptService service(Optional<String> creationKey) throws IOException {
    KeptService started = new KeptService(directory, creationKey, false);
    service = Optional.of(started);
    return started;
  }

  private Walk walk(KeptService on, Map<String, String> settings) {
    return Walk.of(directory, SCRIPT, settings, "http://127.0.0.1:" + on.port());
  }

  @Test
  void theWholeJob() throws IOException {
    KeptService kept = service(Optional.empty());
    Path link = directory.resolve("link");
    Walk walk = walk(kept, Map.of("WALK_LINK", link.toString()));
    assertEquals(0, walk.exitCode(), walk::told);
    assertEquals("", walk.told());
    assertTrue(walk.below("Split").contains("Worst ratio: 0.750000"), walk::toString);
    List<String> without = walk.below("Without sofi");
    assertEquals(
        List.of("Handovers: 4", "Worst ratio: 0.893750"),
        without.subList(without.size() - 2, without.size()));
    assertEquals(
        List.of("1. marek, worst ratio then: 0.931250", "2. lena, worst ratio then: 0.941667"),
        walk.below("Who takes one more thing"));
    assertEquals(
        List.of(
            "empty-pack lena: replaces, 1250 g read, 1100 g expected",
            "whole-pack lena: agrees, 10880 g read, 10850 g expected",
            "whole-pack marek: agrees, 14288.16 g read, 14300 g expected"),
        walk.below("At the scale"));
    assertEquals(List.of("Handovers: 0", "Worst ratio: 0.904167"), walk.below("As weighed"));
    assertEquals("Departure: ready", walk.out().get(walk.out().size() - 1));

    String token = Files.readString(link).strip();
    String made = walk.below("The trip is kept").get(0);
    JsonNode trip =
        kept.get(made.substring(("http://127.0.0.1:" + kept.port()).length()), token).json();
    assertEquals("lena", trip.at("/hikers/0/id").asText());
    assertEquals("1.25 kg", trip.at("/hikers/0/pack/mass").asText());
    assertEquals("marek", trip.at("/hikers/1/id").asText());
    assertEquals(2, trip.path("hikers").size());
  }

  /** Whatever stands before the real program in the path sees what all users of a machine see. */
  @Test
  void nobodySeesTheLinkAmongTheProcesses() throws IOException {
    KeptService kept = service(Optional.empty());
    Path seen = directory.resolve("seen");
    Path link = directory.resolve("link");
    Path first = Files.createDirectory(directory.resolve("first"));
    Path curl = first.resolve("curl");
    String path = System.getenv("PATH");
    Files.writeString(
        curl, "#!/bin/sh\nprintf '%s\\n' \"$@\" >>\"$SEEN\"\nPATH=$PATH_BEHIND exec curl \"$@\"\n");
    assertTrue(curl.toFile().setExecutable(true));
    Map<String, String> settings = new HashMap<>();
    settings.put("PATH", first + ":" + path);
    settings.put("PATH_BEHIND", path);
    settings.put("SEEN", seen.toString());
    settings.put("WALK_LINK", link.toString());
    Walk walk = walk(kept, settings);
    assertEquals(0, walk.exitCode(), walk::told);
    String arguments = Files.readString(seen);
    String secret = Files.readString(link).strip();
    assertTrue(arguments.contains("/departure-check\n"), arguments);
    assertFalse(arguments.contains(secret.substring(secret.indexOf('.') + 1)), "the link is seen");
    assertFalse(arguments.contains("60 kg"), "a body mass is seen");
    assertFalse(walk.toString().contains(secret));
  }

  @Test
  void whatIsKeptIsErasedUnlessItIsWanted() throws IOException {
    KeptService kept = service(Optional.of("reed-lake-1"));
    Walk refused = walk(kept, Map.of());
    assertEquals(3, refused.exitCode(), refused::told);
    assertTrue(refused.told().startsWith("The trip: answered with 404.\n"), refused::told);
    Map<String, String> nobody =
        Map.of("FAIRCARRY_CREATION_KEY", "reed-lake-1", "WALK_WHO", "nobody");
    Walk walk = walk(kept, nobody);
    assertEquals(3, walk.exitCode(), walk::told);
    assertTrue(walk.told().startsWith("Rebalance: answered with 422.\n"), walk::told);
    assertTrue(walk.told().contains("\n/changes/0/hiker\n"), walk::told);
    assertFalse(walk.told().contains("could not be erased"), walk::told);
  }

  @Test
  void rulesThatCannotAllHold() throws IOException {
    Walk walk =
        walk(service(Optional.empty()), Map.of("WALK_TRIP", "demo-data/impossible-rules.json"));
    assertEquals(2, walk.exitCode(), walk::told);
    assertTrue(walk.told().startsWith("The rules cannot all hold. In conflict are:\n"), walk::told);
  }

  @Test
  void noService() {
    Walk walk = Walk.of(directory, SCRIPT, Map.of("FAIRCARRY_ADDRESS", "http://127.0.0.1:1"));
    assertEquals(4, walk.exitCode(), walk::told);
    assertTrue(walk.told().contains("cannot be reached"), walk::told);
  }
}
