package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.check.Issue;
import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.check.TripIssues;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.Policy;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a trip document: the trip, or everything that is wrong with the document at once. */
public final class TripReader {
  /** Name of the format and its version. */
  public static final String FORMAT = "faircarry-trip/1";

  private TripReader() {}

  /** Reads the bytes of a document. */
  public static Reading<Trip> read(byte[] document) {
    Issues issues = new Issues();
    return JsonText.read(document, issues)
        .map(root -> read(root, Pointer.ROOT, issues))
        .orElseGet(() -> Report.bad(issues));
  }

  /**
   * Reads a trip that stands inside a larger document.
   *
   * @param at its place there
   * @param found issues found so far, to be reported together
   */
  static Reading<Trip> read(JsonNode root, Pointer at, Issues found) {
    Issues issues = new Issues();
    Optional<Trip> trip =
        Entry.of(root, Pointer.ROOT, issues).map(entry -> new TripReader().trip(entry));
    List<Issue> semantic =
        trip.map(t -> Consequences.dropped(TripIssues.of(t), issues)).orElse(List.of());
    return Report.of(trip, found, at, issues, semantic);
  }

  /**
   * Reads a trip that tables are to be put into, unjudged: what is wrong with the whole shows only
   * with the tables. It need not have hikers.
   */
  static Reading<Trip> frame(JsonNode root, Pointer at) {
    Issues issues = new Issues();
    JsonNode whole = root;
    if (root.isObject() && !root.has("hikers")) {
      whole = ((ObjectNode) root.deepCopy()).set("hikers", JsonNodeFactory.instance.arrayNode());
    }
    Optional<Trip> trip =
        Entry.of(whole, Pointer.ROOT, issues).map(entry -> new TripReader().trip(entry));
    return Report.of(trip, new Issues(), at, issues, List.of());
  }

  private Trip trip(Entry entry) {
    format(entry, FORMAT);
    String name = entry.neededText("name");
    int days = entry.neededWhole("days", 1);
    Policy policy = entry.child("policy").map(TripReader::policy).orElse(Policy.DEFAULT);
    List<Hiker> hikers = hikers(entry);
    List<SharedItem> shared = shared(entry);
    List<Rule> rules = rules(entry);
    Optional<Plan> plan = entry.child("plan").map(PlanReader::read);
    entry.done();
    return new Trip(name, days, policy, hikers, shared, rules, plan);
  }

  /** Notes a format other than the one read here. */
  static void format(Entry entry, String format) {
    Optional<String> stated = entry.text("format");
    boolean text = entry.find("format").filter(JsonNode::isTextual).isPresent();
    if (stated.isEmpty()) {
      entry.missing("format", "");
    } else if (text && !stated.get().equals(format)) {
      entry
          .issues()
          .add(
              IssueCode.UNKNOWN_FORMAT,
              entry.at().at("format"),
              stated.get(),
              "The format is not \"" + format + "\".",
              "Set \"format\" to \"" + format + "\".");
    }
  }

  private static Policy policy(Entry entry) {
    Policy base = Policy.DEFAULT;
    Policy policy =
        new Policy(
            Quantities.fraction(entry, "targetFraction", base.targetFraction())
                .orElse(base.targetFraction()),
            Quantities.fraction(entry, "capFraction", base.capFraction())
                .orElse(base.capFraction()),
            entry.word("basis", Words.BASIS, base.basis()).orElse(base.basis()),
            entry.whole("grain", base.grainThousandths()).orElse(base.grainThousandths()),
            entry.flag("minorsMayCarryFlameAndFuel"));
    entry.done();
    return policy;
  }

  private static List<Hiker> hikers(Entry entry) {
    List<JsonNode> values =
        entry.list("hikers", Limits.HIKERS).orElseGet(() -> entry.missing("hikers", List.of()));
    HikerReader reader = new HikerReader(new Ids("h", values));
    List<Hiker> hikers = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      hikers.add(reader.read(values.get(i), entry.at().at("hikers").at(i), entry.issues()));
    }
    return hikers;
  }

  private static List<SharedItem> shared(Entry entry) {
    List<JsonNode> values = entry.list("shared", Limits.SHARED_ITEMS).orElse(List.of());
    SharedReader reader = new SharedReader(new Ids("s", values));
    List<SharedItem> items = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      items.add(reader.read(values.get(i), entry.at().at("shared").at(i), entry.issues()));
    }
    return items;
  }

  private static List<Rule> rules(Entry entry) {
    List<JsonNode> values = entry.list("rules", Limits.RULES).orElse(List.of());
    RuleReader reader = new RuleReader(new Ids("r", values));
    List<Rule> rules = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      rules.add(reader.read(values.get(i), entry.at().at("rules").at(i), entry.issues()));
    }
    return rules;
  }
}
