package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.access.Link;
import dev.faircarry.access.Sight;
import dev.faircarry.access.Token;
import dev.faircarry.app.Author;
import dev.faircarry.app.Job;
import dev.faircarry.app.RevisionLine;
import dev.faircarry.app.StoredSplit;
import dev.faircarry.app.StoredTrip;
import dev.faircarry.app.Visit;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes what is kept beside a trip's document: state, history, links, splits, solves. */
public final class KeptWriter {
  private KeptWriter() {}

  /** A new trip and its leader's link. */
  public static byte[] created(String trip, Link link, Token token) {
    ObjectNode out = object();
    out.put("id", trip);
    out.put("revision", 1);
    out.set("link", link(link));
    out.put("token", token.text());
    return JsonBytes.of(out);
  }

  /** A new link with its token, which is shown this once. */
  public static byte[] issued(Link link, Token token) {
    ObjectNode out = link(link);
    out.put("token", token.text());
    return JsonBytes.of(out);
  }

  public static byte[] links(List<Link> links) {
    ArrayNode items = JsonNodeFactory.instance.arrayNode();
    links.forEach(link -> items.add(link(link)));
    return Pages.of(items, Optional.empty());
  }

  static ObjectNode link(Link link) {
    ObjectNode out = object();
    out.put("id", link.id());
    out.put("role", word(link.role()));
    link.hiker().ifPresent(hiker -> out.put("hiker", hiker));
    out.put("madeBy", link.own() ? "hiker" : "leader");
    out.put("created", link.created().toString());
    time(out, "expires", link.expires());
    time(out, "revoked", link.revoked());
    return out;
  }

  /** Where a trip stands, and who asks. */
  public static byte[] state(Visit visit) {
    StoredTrip stored = visit.stored();
    ObjectNode out = object();
    out.put("id", stored.id());
    out.put("revision", stored.head());
    out.put("changed", stored.line().at().toString());
    ObjectNode you = out.putObject("you");
    you.put("role", word(visit.role()));
    visit.link().hiker().ifPresent(hiker -> you.put("hiker", hiker));
    stored.state().agreedSplit().ifPresent(split -> out.put("agreedSplit", split));
    ArrayNode hidden = out.putArray("bodyMassHidden");
    visit.sight().hidden().stream().sorted().forEach(hidden::add);
    ArrayNode kept = out.putArray("bodyMassPrivate");
    stored.state().keptPrivate().stream().sorted().forEach(kept::add);
    time(out, "eraseAt", stored.eraseAt());
    return JsonBytes.of(out);
  }

  /** Lines of history, newest first. */
  public static byte[] history(List<RevisionLine> lines, Optional<String> next) {
    ArrayNode items = JsonNodeFactory.instance.arrayNode();
    for (RevisionLine line : lines) {
      items.add(line(line));
    }
    return Pages.of(items, next);
  }

  static ObjectNode line(RevisionLine line) {
    ObjectNode out = object();
    out.put("number", line.number());
    out.put("at", line.at().toString());
    by(out, line.by());
    out.put("what", line.what());
    out.put("erased", line.erased());
    return out;
  }

  /** Splits of a trip, without their contents. */
  public static byte[] splits(StoredTrip trip, List<StoredSplit> splits, Optional<String> next) {
    ArrayNode items = JsonNodeFactory.instance.arrayNode();
    splits.forEach(split -> items.add(about(trip, split)));
    return Pages.of(items, next);
  }

  static ObjectNode about(StoredTrip trip, StoredSplit split) {
    ObjectNode out = object();
    out.put("id", split.id());
    out.put("revision", split.revision());
    out.put("stale", trip.stale(split));
    out.put("agreed", trip.state().agreedSplit().filter(split.id()::equals).isPresent());
    out.put("at", split.at().toString());
    by(out, split.by());
    out.put("from", split.proof().isPresent() ? "search" : "hand");
    return out;
  }

  /**
   * Where a solve stands.
   *
   * @param sight what the reader may see of the revision it answers
   */
  public static byte[] job(Job job, Sight sight) {
    ObjectNode out = object();
    out.put("id", job.id());
    out.put("state", job.state().name().toLowerCase(Locale.ROOT));
    out.put("revision", job.revision());
    out.put("effort", job.effortSteps());
    out.put("asked", job.asked().toString());
    out.put("stopAsked", job.stopAsked());
    job.progress()
        .ifPresent(
            progress -> {
              ObjectNode one = out.putObject("progress");
              one.put("phase", progress.phase().name().toLowerCase(Locale.ROOT));
              if (!sight.hidesAny()) {
                // The search can be repeated with any body mass: its steps would be a fingerprint.
                one.put("effortSteps", progress.effortSteps());
                one.put("worstSteps", progress.worstSteps());
                one.put("boundSteps", progress.boundSteps());
                one.put("provedLevels", progress.provedLevels());
              }
            });
    return JsonBytes.of(out);
  }

  /** What a hiker or the trip will be erased at. */
  public static byte[] eraseAt(Instant at) {
    ObjectNode out = object();
    out.put("eraseAt", at.toString());
    return JsonBytes.of(out);
  }

  static void by(ObjectNode out, Author by) {
    ObjectNode who = out.putObject("by");
    who.put("role", word(by.role()));
    by.hiker().ifPresent(hiker -> who.put("hiker", hiker));
  }

  private static void time(ObjectNode out, String field, Optional<Instant> time) {
    time.ifPresent(t -> out.put(field, t.toString()));
  }

  private static String word(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }

  private static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }
}
