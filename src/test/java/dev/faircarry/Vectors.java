package dev.faircarry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Test vectors from outside sources, one JSON object a line, under {@code
 * src/test/resources/vectors}.
 */
public final class Vectors {
  private Vectors() {}

  /**
   * One vector.
   *
   * @param tolerance how far the published value may be missed, in its unit
   */
  public record Vector(
      String id, String model, JsonNode in, JsonNode out, double tolerance, String source) {
    public double in(String name) {
      return number(in, name);
    }

    public double out(String name) {
      return number(out, name);
    }

    public boolean has(String name) {
      return in.has(name);
    }

    private double number(JsonNode node, String name) {
      if (!node.path(name).isNumber()) {
        throw new IllegalArgumentException(id + " has no number " + name);
      }
      return node.path(name).asDouble();
    }

    @Override
    public String toString() {
      return id + " " + model + " (" + source + ")";
    }
  }

  /** All vectors of a file. */
  public static List<Vector> of(String name) {
    ObjectMapper mapper = new ObjectMapper();
    InputStream stream =
        Objects.requireNonNull(
            Vectors.class.getResourceAsStream("/vectors/" + name + ".jsonl"), name);
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .map(
              line -> {
                try {
                  JsonNode v = mapper.readTree(line);
                  return new Vector(
                      v.path("id").asText(),
                      v.path("model").asText(),
                      v.path("in"),
                      v.path("out"),
                      tolerance(v.path("tol").asText()),
                      v.path("source").asText());
                } catch (IOException e) {
                  throw new UncheckedIOException(e);
                }
              })
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The vectors of some models in a file; never none. */
  public static Stream<Vector> of(String name, String... models) {
    List<String> wanted = List.of(models);
    List<Vector> found = of(name).stream().filter(v -> wanted.contains(v.model())).toList();
    if (found.isEmpty()) {
      throw new IllegalArgumentException("no vector of " + wanted);
    }
    return found.stream();
  }

  private static double tolerance(String text) {
    String number =
        text.replace("±", "").replaceAll("[^-0-9.eE]*$", "").replaceAll(" .*", "").strip();
    return Math.max(1e-9, Double.parseDouble(number));
  }
}
