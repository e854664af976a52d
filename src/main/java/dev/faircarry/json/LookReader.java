package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.effort.CostModel;
import dev.faircarry.effort.WalkingRule;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads what to look at: a trip, its split if there is one, and how. */
public final class LookReader {
  private static final Map<String, WalkingRule> RULES = Words.of(WalkingRule.values());
  private static final Map<String, CostModel> MODELS = Words.of(CostModel.values());

  private LookReader() {}

  /**
   * What to look at.
   *
   * @param split empty when only own kits are looked at
   * @param withSplits whether the fairest splits before and after a choice are wanted
   */
  public record Look(
      Trip trip,
      Optional<Split> split,
      WalkingRule walkingTime,
      CostModel cost,
      boolean withSplits) {}

  /** Reads {@code {"trip": …, "split": …}}. */
  public static Reading<Look> read(byte[] document) {
    Issues issues = new Issues();
    return JsonText.read(document, issues)
        .flatMap(root -> Entry.of(root, Pointer.ROOT, issues))
        .map(entry -> look(entry, issues))
        .orElseGet(() -> Report.bad(issues));
  }

  /** What stands in documents of their own. */
  public static Reading<Look> read(
      byte[] trip,
      Optional<byte[]> split,
      WalkingRule walkingTime,
      CostModel cost,
      boolean withSplits) {
    Reading<Trip> readTrip = TripReader.read(trip);
    return split.isEmpty()
        ? readTrip.map(t -> new Look(t, Optional.empty(), walkingTime, cost, withSplits))
        : together(
            new Issues(),
            Optional.of(readTrip),
            split.map(SplitReader::read),
            walkingTime,
            cost,
            withSplits);
  }

  private static Reading<Look> look(Entry entry, Issues issues) {
    WalkingRule rule =
        entry
            .word("walkingTime", RULES, WalkingRule.NAISMITH_LANGMUIR)
            .orElse(WalkingRule.NAISMITH_LANGMUIR);
    CostModel model = entry.word("cost", MODELS, CostModel.LCDA).orElse(CostModel.LCDA);
    boolean withSplits = entry.flag("withSplits");
    Optional<JsonNode> trip = entry.find("trip");
    Optional<JsonNode> split = entry.find("split");
    if (trip.isEmpty()) {
      issues.add(
          IssueCode.MISSING,
          Pointer.ROOT.at("trip"),
          "",
          "The field \"trip\" is needed and not there.");
    }
    entry.done();
    Optional<Reading<Trip>> readTrip =
        trip.map(node -> TripReader.read(node, Pointer.ROOT.at("trip"), new Issues()));
    Optional<Reading<Split>> readSplit =
        split.map(node -> SplitReader.read(node, Pointer.ROOT.at("split"), new Issues()));
    return together(issues, readTrip, readSplit, rule, model, withSplits);
  }

  private static Reading<Look> together(
      Issues issues,
      Optional<Reading<Trip>> readTrip,
      Optional<Reading<Split>> readSplit,
      WalkingRule rule,
      CostModel model,
      boolean withSplits) {
    List<Reading<?>> parts = new ArrayList<>();
    readTrip.ifPresent(parts::add);
    readSplit.ifPresent(parts::add);
    return Report.together(
        issues,
        parts,
        () ->
            new Look(
                ((Reading.Read<Trip>) readTrip.orElseThrow()).value(),
                readSplit.map(r -> ((Reading.Read<Split>) r).value()),
                rule,
                model,
                withSplits));
  }
}
