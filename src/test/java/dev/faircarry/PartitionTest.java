package dev.faircarry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.Vectors.Vector;
import dev.faircarry.cli.Console;
import dev.faircarry.cli.ExitCode;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Published instances of number partitioning through the whole program, document in, answer out.
 * With empty kits and equal target loads, the loads are the sums of the parts, and the highest
 * ratio is the makespan. The grain is the finest, 0.001 of the target load; a unit of the source is
 * 1 kg.
 */
class PartitionTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** A step is 0.1 kg, so that ten steps are one unit of the source. */
  private static final String EQUAL_TARGET = "100 kg";

  private static final int STEPS_PER_UNIT = 10;

  /**
   * What the program answers.
   *
   * @param loads kilograms by hiker
   * @param steps by hiker
   */
  private record Answer(JsonNode document, List<BigDecimal> loads, List<Long> steps) {
    List<Integer> falling() {
      return loads.stream()
          .map(BigDecimal::intValueExact)
          .sorted(Collections.reverseOrder())
          .toList();
    }
  }

  static Stream<Vector> graham() {
    return Vectors.of("partition", "graham_lpt_tight");
  }

  static Stream<Vector> partitions() {
    return Vectors.of("partition", "partition");
  }

  static Stream<Vector> weighted() {
    return Vectors.of("partition", "weighted_partition");
  }

  /** The instances on which longest-first goes wrong by the most. */
  @ParameterizedTest
  @MethodSource("graham")
  void theMakespanIsThatOfTheSource(Vector vector) throws IOException {
    int parts = vector.in().path("parts").asInt();
    Answer answer = split(items(vector), Collections.nCopies(parts, EQUAL_TARGET));
    int best = vector.out().path("opt_max").asInt();
    assertEquals(best, answer.falling().get(0));
    assertEquals((long) best * STEPS_PER_UNIT, Collections.max(answer.steps()));
    assertTrue(answer.document().at("/proof/proved").asBoolean());
  }

  @ParameterizedTest
  @MethodSource("partitions")
  void theSumsAreThoseOfTheSource(Vector vector) throws IOException {
    int parts = vector.in().path("parts").asInt();
    Answer answer = split(items(vector), Collections.nCopies(parts, EQUAL_TARGET));
    List<Integer> published =
        new ArrayList<>(
            numbers(
                vector.out().has("opt_sums")
                    ? vector.out().path("opt_sums")
                    : vector.out().path("leximin_desc")));
    published.sort(Collections.reverseOrder());
    assertEquals(published, answer.falling());
    assertTrue(answer.document().at("/proof/proved").asBoolean());
  }

  /**
   * Unequal shares. The sources add up what misses the targets, the program makes the highest ratio
   * low; where nothing misses, both agree. Elsewhere all assignments are tried here.
   */
  @ParameterizedTest
  @MethodSource("weighted")
  void theHighestRatioIsTheLowestOfAllAssignments(Vector vector) throws IOException {
    List<Integer> items = items(vector);
    int total = items.stream().mapToInt(Integer::intValue).sum();
    List<BigDecimal> targets =
        StreamSupport.stream(vector.in().path("shares").spliterator(), false)
            .map(share -> share.decimalValue().multiply(BigDecimal.valueOf(total)))
            .toList();
    Answer answer =
        split(
            items,
            targets.stream().map(t -> t.stripTrailingZeros().toPlainString() + " kg").toList());
    assertEquals(bestOfAll(items, targets), sorted(answer.steps()));
    if (vector.out().path("objective").asDouble() == 0) {
      assertEquals(
          numbers(vector.out().path("sums")),
          answer.loads().stream().map(BigDecimal::intValueExact).toList());
    }
  }

  private static List<Integer> items(Vector vector) {
    return numbers(vector.in().path("items"));
  }

  private static List<Integer> numbers(JsonNode list) {
    return StreamSupport.stream(list.spliterator(), false).map(JsonNode::asInt).toList();
  }

  private static List<Long> sorted(List<Long> steps) {
    return steps.stream().sorted(Collections.reverseOrder()).toList();
  }

  private static List<Long> bestOfAll(List<Integer> items, List<BigDecimal> targets) {
    int hikers = targets.size();
    long assignments = Math.round(Math.pow(hikers, items.size()));
    List<Long> best = List.of(Long.MAX_VALUE);
    for (long code = 0; code < assignments; code++) {
      long[] sums = new long[hikers];
      long rest = code;
      for (int item : items) {
        sums[(int) (rest % hikers)] += item;
        rest /= hikers;
      }
      List<Long> steps =
          sorted(
              IntStream.range(0, hikers)
                  .mapToObj(
                      i ->
                          BigDecimal.valueOf(sums[i] * 1000)
                              .divide(targets.get(i), 0, java.math.RoundingMode.CEILING)
                              .longValueExact())
                  .toList());
      if (less(steps, best)) {
        best = steps;
      }
    }
    return best;
  }

  private static boolean less(List<Long> one, List<Long> other) {
    for (int k = 0; k < one.size(); k++) {
      int order = one.get(k).compareTo(other.get(k));
      if (order != 0) {
        return order < 0;
      }
    }
    return false;
  }

  private static Answer split(List<Integer> items, List<String> targets) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int code =
        Main.run(
            new Console(
                new ByteArrayInputStream(document(items, targets)),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8)),
            "split",
            "-",
            "--json");
    assertEquals(ExitCode.FINE.number(), code);
    JsonNode answer = MAPPER.readTree(out.toByteArray());
    List<BigDecimal> loads = new ArrayList<>();
    List<Long> steps = new ArrayList<>();
    for (JsonNode carry : answer.path("carries")) {
      loads.add(carry.at("/mornings/0/loadGrams").decimalValue().movePointLeft(3));
      steps.add(carry.at("/mornings/0/steps").asLong());
    }
    return new Answer(answer, loads, steps);
  }

  private static byte[] document(List<Integer> items, List<String> targets) throws IOException {
    ObjectNode trip = MAPPER.createObjectNode();
    trip.put("format", "faircarry-trip/1").put("name", "Parts").put("days", 1);
    trip.putObject("policy").put("grain", 1);
    ArrayNode hikers = trip.putArray("hikers");
    for (int i = 0; i < targets.size(); i++) {
      hikers
          .addObject()
          .put("id", "h" + i)
          .put("name", "Part " + i)
          .put("targetLoad", targets.get(i));
    }
    ArrayNode shared = trip.putArray("shared");
    for (int i = 0; i < items.size(); i++) {
      shared
          .addObject()
          .put("id", "s" + i)
          .put("name", "Item " + i)
          .put("mass", items.get(i) + " kg");
    }
    return MAPPER.writeValueAsBytes(trip);
  }
}
