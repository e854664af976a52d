package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.check.Issue;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Trip;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Parts of a trip document, read and changed as somebody sees them who may not see every body mass.
 *
 * <p>A change is made to what its author sees. Body masses the author does not see are put back
 * afterwards; stating one is refused whatever it is, for an answer that depended on it could be
 * asked until the mass is found. A path names fields of objects and ids of entries: {@code hikers,
 * asha, kit, quilt}.
 */
public final class DocumentEdit {
  private static final String ID = "id";
  private static final String BODY_MASS = "bodyMass";

  private final Trip full;
  private final Set<String> hidden;

  /**
   * @param hidden ids of hikers whose body mass the author does not see
   */
  public DocumentEdit(Trip full, Set<String> hidden) {
    this.full = full;
    this.hidden = hidden;
  }

  /** What came of a change. */
  public sealed interface Edited {

    /**
     * The whole trip after the change, hidden body masses included.
     *
     * @param path where what was changed or added now is
     */
    record Done(Trip trip, List<String> path) implements Edited {
      public Done {
        path = List.copyOf(path);
      }
    }

    /** The change, or the document after it, has issues. */
    record Bad(List<Issue> issues, boolean more) implements Edited {
      public Bad {
        issues = List.copyOf(issues);
      }
    }

    /** There is nothing at that path. */
    record Nowhere() implements Edited {}

    /** The change states a body mass that its author does not see. */
    record StatesHidden() implements Edited {}
  }

  /** What stands at a path, as a document of its own. */
  public Optional<byte[]> part(List<String> path) {
    return at(seen(), path).map(JsonBytes::of);
  }

  /**
   * Entries of the list at a path, with the id to go on from.
   *
   * @param after id of the last entry already seen; empty to begin
   */
  public Optional<byte[]> page(List<String> path, Optional<String> after, int limit) {
    ObjectNode seen = seen();
    return listAt(seen, path).map(list -> Pages.of(list, after, limit));
  }

  /** Puts a document in the place of what stands at a path. An entry keeps its id. */
  public Edited replace(List<String> path, byte[] part) {
    return with(part, (tree, node) -> put(tree, path, node));
  }

  /** Merges a patch into what stands at a path (RFC 7396). An entry keeps its id. */
  public Edited merge(List<String> path, byte[] patch) {
    return with(
        patch,
        (tree, node) ->
            at(tree, path)
                .map(old -> put(tree, path, MergePatch.apply(old, node)))
                .orElse(Optional.empty()));
  }

  /** Adds an entry at the end of the list at a path. */
  public Edited add(List<String> path, byte[] entry) {
    return with(
        entry,
        (tree, node) -> {
          Optional<ArrayNode> list = listAt(tree, path);
          list.ifPresent(entries -> entries.add(node));
          return list.map(entries -> path);
        });
  }

  /** Removes what stands at a path. */
  public Edited remove(List<String> path) {
    ObjectNode tree = seen();
    Optional<JsonNode> parent =
        path.isEmpty() ? Optional.empty() : at(tree, path.subList(0, path.size() - 1));
    if (parent.isEmpty() || at(tree, path).isEmpty()) {
      return new Edited.Nowhere();
    }
    String last = path.get(path.size() - 1);
    if (parent.get() instanceof ObjectNode object) {
      object.remove(last);
    } else {
      removeEntry(parent.get(), last);
    }
    return read(tree, path);
  }

  private interface Change {
    /** Changes the tree; the path of what was changed, or nothing if there is no such place. */
    Optional<List<String>> make(ObjectNode tree, JsonNode stated);
  }

  private Edited with(byte[] stated, Change change) {
    Issues issues = new Issues();
    Optional<JsonNode> node = JsonText.read(stated, issues);
    if (node.isEmpty() || !issues.list().isEmpty()) {
      return bad(Report.bad(issues));
    }
    ObjectNode tree = seen();
    Optional<List<String>> path = change.make(tree, node.get());
    if (path.isEmpty()) {
      return new Edited.Nowhere();
    }
    return read(tree.has(WHOLE) ? tree.get(WHOLE) : tree, path.get());
  }

  /** Where a new whole document waits, which may be no object: no field has this name. */
  private static final String WHOLE = "";

  private static Optional<List<String>> put(ObjectNode tree, List<String> path, JsonNode node) {
    if (path.isEmpty()) {
      tree.set(WHOLE, node);
      return Optional.of(path);
    }
    Optional<JsonNode> parent = at(tree, path.subList(0, path.size() - 1));
    String last = path.get(path.size() - 1);
    if (parent.isPresent() && parent.get() instanceof ObjectNode object) {
      object.set(last, node);
      return Optional.of(path);
    }
    if (parent.isPresent() && parent.get() instanceof ArrayNode list) {
      for (int i = 0; i < list.size(); i++) {
        if (list.get(i).path(ID).asText().equals(last)) {
          if (node instanceof ObjectNode entry) {
            entry.put(ID, last);
          }
          list.set(i, node);
          return Optional.of(path);
        }
      }
    }
    return Optional.empty();
  }

  private static void removeEntry(JsonNode list, String id) {
    for (Iterator<JsonNode> entries = list.elements(); entries.hasNext(); ) {
      if (entries.next().path(ID).asText().equals(id)) {
        entries.remove();
      }
    }
  }

  /** The list at a path, made empty if its object has none yet. */
  private static Optional<ArrayNode> listAt(ObjectNode tree, List<String> path) {
    Optional<JsonNode> found = at(tree, path);
    if (found.isEmpty() && path.size() > 1) {
      return at(tree, path.subList(0, path.size() - 1))
          .filter(JsonNode::isObject)
          .map(parent -> ((ObjectNode) parent).putArray(path.get(path.size() - 1)));
    }
    return found.filter(JsonNode::isArray).map(ArrayNode.class::cast);
  }

  static Optional<JsonNode> at(JsonNode tree, List<String> path) {
    JsonNode node = tree;
    for (String step : path) {
      JsonNode next = null;
      if (node.isObject()) {
        next = node.get(step);
      } else if (node.isArray()) {
        for (JsonNode entry : node) {
          if (entry.path(ID).asText().equals(step)) {
            next = entry;
          }
        }
      }
      if (next == null) {
        return Optional.empty();
      }
      node = next;
    }
    return Optional.of(node);
  }

  private ObjectNode seen() {
    ObjectNode tree = TripWriter.tree(full);
    for (JsonNode hiker : tree.path("hikers")) {
      if (hidden.contains(hiker.path(ID).asText())) {
        ((ObjectNode) hiker).remove(BODY_MASS);
      }
    }
    return tree;
  }

  private Edited read(JsonNode tree, List<String> path) {
    Map<String, String> masses = new HashMap<>();
    for (Hiker hiker : full.hikers()) {
      if (hidden.contains(hiker.id())) {
        hiker.bodyMass().ifPresent(mass -> masses.put(hiker.id(), mass.entered()));
      }
    }
    for (JsonNode entry : tree.path("hikers")) {
      String id = entry.path(ID).asText();
      if (entry instanceof ObjectNode hiker && masses.containsKey(id)) {
        if (hiker.has(BODY_MASS)) {
          return new Edited.StatesHidden();
        }
        hiker.put(BODY_MASS, masses.get(id));
      }
    }
    Reading<Trip> reading = TripReader.read(tree, Pointer.ROOT, new Issues());
    if (reading instanceof Reading.Read<Trip> read) {
      return new Edited.Done(read.value(), named(read.value(), tree, path));
    }
    return bad(reading);
  }

  /** For an entry added to a list, the path that names it by the id it got. */
  private static List<String> named(Trip trip, JsonNode before, List<String> path) {
    boolean list = !path.isEmpty() && at(before, path).filter(JsonNode::isArray).isPresent();
    if (!list) {
      return path;
    }
    JsonNode entries = at(TripWriter.tree(trip), path).orElseThrow();
    String id = entries.path(entries.size() - 1).path(ID).asText();
    return Stream.concat(path.stream(), Stream.of(id)).toList();
  }

  private static Edited bad(Reading<?> reading) {
    Reading.Bad<?> bad = (Reading.Bad<?>) reading;
    return new Edited.Bad(bad.issues(), bad.more());
  }
}
