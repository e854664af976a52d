package dev.faircarry.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.faircarry.faults.Operations.Operation;
import dev.faircarry.http.Contract;
import dev.faircarry.store.Seal;
import dev.faircarry.store.Stores;
import java.io.EOFException;
import java.io.IOException;
import java.net.SocketException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Ten thousand requests, each wrong in some way, made from what the contract describes: none is
 * answered by a failure of the service, and no answer tells how the service is made.
 */
@Tag("slow")
class MalformedRequestsTest {
  private static final int REQUESTS = 10_000;
  private static final long SEED = 20_261;
  private static final int STAGE_LASTS = 100;
  private static final Set<String> HONEST = Set.of("busy", "store-unavailable");

  /** What would tell how the service is made; none of it is ever sent to it. */
  private static final Pattern INSIDE =
      Pattern.compile(
          "dev\\.faircarry|java\\.(lang|util|io|net|nio|sql)|\\.java|Exception|Throwable|\\$Lambda"
              + "|(?i:jetty|javalin|jackson|jdbi|sqlite|hikari|flyway|tink)"
              + "|SELECT |INSERT |UPDATE |DELETE FROM|(?i:/(tmp|home|root)/)|trips\\.db");

  private static final Schema PROBLEM = problem();

  @TempDir Path folder;

  private static Schema problem() {
    ObjectNode schema =
        Contract.document().at("/components/schemas/Problem").<ObjectNode>deepCopy();
    schema.set("components", Contract.document().get("components"));
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(schema.toString(), InputFormat.JSON);
  }

  @Test
  void nothingFailsAndNothingLeaks() throws Exception {
    List<Operation> operations = Operations.all();
    Map<String, Integer> statuses = new TreeMap<>();
    try (Service service =
        new Service(Stores.sqlite(folder.resolve("trips.db"), Seal.ofKeyset(Seal.newKeyset())))) {
      Wire wire = Wire.to(service.port());
      Stage stage = Stage.set(service.port());
      for (int i = 0; i < REQUESTS; i++) {
        Operation operation = operations.get(i % operations.size());
        // Of its own for each request, so that a new operation leaves those of others as they are.
        Random random =
            new Random(SEED ^ operation.id().hashCode() ^ (i / operations.size() * 31L));
        if (i % STAGE_LASTS == 0) {
          stage = Stage.set(service.port());
        }
        Malformed request = Malformed.of(operation, stage.values(), stage.token(), random);
        String about = "seed " + SEED + ", request " + i + " to " + operation.id() + ", " + request;
        Optional<Wire.Answer> answer = asked(wire, request);
        if (answer.isEmpty() && request.framed()) {
          // The connection may have been closed behind the answer before; a new one is not.
          wire.close();
          wire = Wire.to(service.port());
          answer = asked(wire, request);
          assertTrue(answer.isPresent(), "no answer, " + about);
        }
        wire.early()
            .ifPresent(first -> System.out.println("told twice, at first " + first + ", " + about));
        answer.ifPresent(each -> judge(each, request.head(), about));
        String status = answer.map(each -> String.valueOf(each.status())).orElse("none");
        statuses.merge(status, 1, Integer::sum);
        if (!request.framed() || answer.filter(MalformedRequestsTest::goesOn).isEmpty()) {
          wire.close();
          wire = Wire.to(service.port());
        }
      }
      wire.close();
    }
    assertTrue(statuses.size() > 5, statuses::toString);
    assertTrue(statuses.getOrDefault("none", 0) < REQUESTS / 20, statuses::toString);
  }

  /** The answer; none if the connection ends without one, as it may after what is not HTTP. */
  private static Optional<Wire.Answer> asked(Wire wire, Malformed request) throws IOException {
    try {
      wire.send(request.bytes());
      if (!request.framed()) {
        wire.endSending();
      }
      return Optional.of(wire.read(request.head()));
    } catch (EOFException | SocketException e) {
      return Optional.empty();
    }
  }

  private static boolean goesOn(Wire.Answer answer) {
    return !answer.last() && !answer.kind().equals("text/event-stream");
  }

  private static void judge(Wire.Answer answer, boolean head, String about) {
    String text = answer.text();
    String said = about + "\n-> " + answer.status() + " " + answer.headers() + "\n" + text;
    assertFalse(INSIDE.matcher(answer.headers().toString()).find(), said);
    if (answer.status() < 400 || head) {
      assertTrue(answer.status() < 500, said);
      return;
    }
    assertEquals("application/problem+json", answer.kind(), said);
    assertTrue(PROBLEM.validate(text, InputFormat.JSON).isEmpty(), said);
    assertFalse(INSIDE.matcher(text).find(), said);
    JsonNode problem = Editor.json(answer);
    assertEquals(answer.status(), problem.get("status").asInt(), said);
    // RFC 9110, section 9.1, asks for 501 where nobody knows the method.
    boolean unknownMethod = problem.get("code").asText().equals("method-unknown");
    if (answer.status() >= 500 && !unknownMethod) {
      assertEquals(503, answer.status(), said);
      assertTrue(HONEST.contains(problem.get("code").asText()), said);
      assertTrue(answer.headers().containsKey("retry-after"), said);
    }
  }
}
