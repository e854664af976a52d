package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.split.Demand;
import dev.faircarry.split.Outcome;
import dev.faircarry.split.Progress;
import dev.faircarry.split.Proof;
import dev.faircarry.split.Split;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Outcomes as the store keeps them. Nobody outside sees this form; what is read here was written
 * here, so anything else in it is a damaged store and an exception.
 */
public final class OutcomeText {
  private OutcomeText() {}

  public static byte[] write(Outcome outcome) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    if (outcome instanceof Outcome.Solved solved) {
      out.put("kind", "solved");
      out.set("split", SplitWriter.tree(solved.split()));
      out.set("proof", proof(solved.proof()));
    } else if (outcome instanceof Outcome.Impossible impossible) {
      out.put("kind", "impossible");
      ArrayNode conflict = out.putArray("conflict");
      impossible.conflict().forEach(demand -> conflict.add(demand(demand)));
      out.put("irreducible", impossible.irreducible());
      out.put("effortSteps", impossible.effortSteps());
    } else if (outcome instanceof Outcome.Undecided undecided) {
      out.put("kind", "undecided");
      out.put("effortSteps", undecided.effortSteps());
      out.put("cutByClock", undecided.cutByClock());
    }
    return JsonBytes.of(out);
  }

  public static Outcome read(byte[] text) {
    JsonNode in = tree(text);
    return switch (in.path("kind").asText()) {
      case "solved" -> new Outcome.Solved(split(in.path("split")), proof(in.path("proof")));
      case "impossible" -> {
        List<Demand> conflict = new ArrayList<>();
        in.path("conflict").forEach(each -> conflict.add(demand(each)));
        yield new Outcome.Impossible(
            conflict, in.path("irreducible").asBoolean(), in.path("effortSteps").asLong());
      }
      case "undecided" ->
          new Outcome.Undecided(in.path("effortSteps").asLong(), in.path("cutByClock").asBoolean());
      default -> throw damaged();
    };
  }

  public static byte[] writeProgress(Progress progress) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("phase", progress.phase().name());
    out.put("worstSteps", progress.worstSteps());
    out.put("boundSteps", progress.boundSteps());
    out.put("provedLevels", progress.provedLevels());
    out.put("effortSteps", progress.effortSteps());
    return JsonBytes.of(out);
  }

  public static Progress readProgress(byte[] text) {
    JsonNode in = tree(text);
    return new Progress(
        Progress.Phase.valueOf(in.path("phase").asText()),
        in.path("worstSteps").asLong(),
        in.path("boundSteps").asLong(),
        in.path("provedLevels").asInt(),
        in.path("effortSteps").asLong());
  }

  private static ObjectNode proof(Proof proof) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("levels", proof.levels());
    out.put("provedLevels", proof.provedLevels());
    out.put("provedByBound", proof.provedByBound());
    proof.boundSteps().ifPresent(bound -> out.put("boundSteps", bound));
    out.put("excessProved", proof.excessProved());
    out.put("effortSteps", proof.effortSteps());
    out.put("cutByClock", proof.cutByClock());
    return out;
  }

  private static Proof proof(JsonNode in) {
    return new Proof(
        in.path("levels").asInt(),
        in.path("provedLevels").asInt(),
        in.path("provedByBound").asInt(),
        in.has("boundSteps")
            ? OptionalLong.of(in.path("boundSteps").asLong())
            : OptionalLong.empty(),
        in.path("excessProved").asBoolean(),
        in.path("effortSteps").asLong(),
        in.path("cutByClock").asBoolean());
  }

  private static ObjectNode demand(Demand demand) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    if (demand instanceof Demand.OfRule of) {
      out.put("rule", of.ruleId());
    } else if (demand instanceof Demand.OfMinor of) {
      out.put("minor", of.hiker());
    } else if (demand instanceof Demand.OfRoom of) {
      out.put("room", of.hiker());
    } else if (demand instanceof Demand.OfMaxPieces of) {
      out.put("maxPieces", of.hiker());
    } else if (demand instanceof Demand.OfContainers of) {
      out.put("containers", of.kind());
    }
    return out;
  }

  private static Demand demand(JsonNode in) {
    String field = in.fieldNames().hasNext() ? in.fieldNames().next() : "";
    String value = in.path(field).asText();
    return switch (field) {
      case "rule" -> new Demand.OfRule(value);
      case "minor" -> new Demand.OfMinor(value);
      case "room" -> new Demand.OfRoom(value);
      case "maxPieces" -> new Demand.OfMaxPieces(value);
      case "containers" -> new Demand.OfContainers(value);
      default -> throw damaged();
    };
  }

  private static Split split(JsonNode in) {
    if (SplitReader.read(in, Pointer.ROOT, new Issues()) instanceof Reading.Read<Split> read) {
      return read.value();
    }
    throw damaged();
  }

  private static JsonNode tree(byte[] text) {
    Optional<JsonNode> tree = JsonText.read(text, new Issues());
    return tree.orElseThrow(OutcomeText::damaged);
  }

  private static IllegalStateException damaged() {
    return new IllegalStateException("what the store kept cannot be read");
  }
}
