package dev.faircarry.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.check.SplitCheck;
import dev.faircarry.check.Verdict;
import dev.faircarry.json.Documents;
import dev.faircarry.json.Reading;
import dev.faircarry.json.SplitReader;
import dev.faircarry.json.TripReader;
import dev.faircarry.json.TripWriter;
import dev.faircarry.oracle.ChangeGenerator;
import dev.faircarry.oracle.Movement;
import dev.faircarry.oracle.TripGenerator;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import dev.faircarry.trip.change.Changed;
import dev.faircarry.trip.change.TripChanging;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Random changes of a stored trip, one after the other, each accepted: whatever is agreed on then
 * keeps the rules of the trip as it then is, and is as many handovers from what was agreed on
 * before as was told.
 */
class StoredChangesLawsTest {
  private static final TripGenerator.Shape SHAPE = TripGenerator.Shape.of(4, 3, 6);
  private static final String EFFORT = "?effort=300000";

  @TempDir private static Path directory;
  private static KeptService service;
  private int accepted;

  @BeforeAll
  static void begin() throws IOException {
    service = new KeptService(directory, Optional.empty(), false);
  }

  @AfterAll
  static void end() {
    service.close();
  }

  /** A stored trip, as its leader has it. */
  private record Kept(String place, String token) {
    Trip trip() {
      return read(TripReader.read(bytes(service.get(place, token).body())));
    }

    Split split(String id) {
      return read(SplitReader.read(bytes(service.get(place + "/splits/" + id, token).body())));
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static <T> T read(Reading<T> reading) {
    if (reading instanceof Reading.Bad<T> bad) {
      throw new AssertionError(bad.issues().toString());
    }
    return ((Reading.Read<T>) reading).value();
  }

  @Test
  void whatIsAgreedOnKeepsTheRulesOfTheTripAsItIs() {
    LongStream.range(50_000, 50_008).forEach(seed -> walk(seed, 4));
    assertTrue(accepted >= 12, accepted + " changes accepted");
  }

  @Test
  @Tag("slow")
  void soItDoesAfterManyChanges() {
    LongStream.range(51_000, 51_060).forEach(seed -> walk(seed, 8));
    assertTrue(accepted >= 150, accepted + " changes accepted");
  }

  private void walk(long seed, int steps) {
    SplittableRandom random = new SplittableRandom(seed);
    String document =
        new String(TripWriter.write(TripGenerator.trip(seed, SHAPE)), StandardCharsets.UTF_8);
    KeptService.Reply made = service.send("POST", "/v1/trips", "", document);
    assertEquals(201, made.status(), () -> "seed " + seed + made.body());
    Kept kept = new Kept(made.location(), made.json().path("token").asText());
    KeptService.Reply found =
        service.send(
            "POST", kept.place() + "/splits" + EFFORT, kept.token(), "", "Prefer", "wait=30");
    if (found.status() != 201) {
      return;
    }
    String agreed = found.json().at("/kept/id").asText();
    service.send(
        "PUT",
        kept.place() + "/agreed-split",
        kept.token(),
        "{\"split\": \"" + agreed + "\"}",
        "If-Match",
        "*");
    for (int step = 0; step < steps; step++) {
      List<Change> changes = ChangeGenerator.changes(kept.trip(), 2, random);
      agreed = change("seed " + seed + " step " + step + " " + changes, kept, agreed, changes);
    }
  }

  /** Makes changes; the split that is agreed on afterwards. */
  private String change(String where, Kept kept, String agreed, List<Change> changes) {
    Trip before = kept.trip();
    Changed.Made expected =
        assertInstanceOf(Changed.Made.class, TripChanging.apply(before, changes), where);
    String tag = service.get(kept.place(), kept.token()).tag();
    KeptService.Reply reply =
        service.send(
            "POST",
            kept.place() + "/rebalances" + EFFORT,
            kept.token(),
            "{\"accept\": true, \"changes\": " + Documents.changes(changes) + "}",
            "If-Match",
            tag);
    if (reply.status() == 200) {
      // There is no split then, and nothing is kept.
      assertTrue(!reply.json().path("result").asText().equals("curve"), where + reply.body());
      assertEquals(before, kept.trip(), where);
      assertEquals(tag, service.get(kept.place(), kept.token()).tag(), where);
      return agreed;
    }
    assertEquals(201, reply.status(), where + reply.body());
    String now = reply.json().at("/kept/id").asText();
    Trip after = kept.trip();
    Split split = kept.split(now);
    assertEquals(expected.trip(), after, where);
    Verdict verdict = SplitCheck.verdict(after, split);
    assertTrue(verdict.keepsRules(), () -> where + verdict.findings());
    JsonNode point = reply.json().path("points").get(reply.json().path("chosen").asInt());
    assertEquals(
        Movement.between(kept.split(agreed), split, after).units(),
        point.path("handovers").asInt(),
        where);
    assertEquals(verdict.steps().get(0), point.at("/worst/steps").asLong(), where);
    JsonNode departure = service.get(kept.place() + "/departure-check", kept.token()).json();
    assertEquals(now, departure.at("/kept/id").asText(), where);
    assertFalse(departure.path("findings").findValuesAsText("code").contains("stale"), where);
    accepted++;
    return now;
  }
}
