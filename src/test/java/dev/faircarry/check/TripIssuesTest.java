package dev.faircarry.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Policy;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Trip;
import dev.faircarry.unit.Mass;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Issues of trips that were not read from a document, where no reader kept the limits. */
class TripIssuesTest {

  private static Hiker hiker(int number) {
    return new Hiker(
        "h" + number,
        "Hiker",
        Optional.of(Mass.ofMilligrams(60_000_000L)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        false,
        OptionalInt.empty(),
        Optional.empty(),
        List.of());
  }

  private static SharedItem item(int number, List<String> covers) {
    return new SharedItem(
        "s" + number,
        "Item",
        Optional.empty(),
        covers,
        OptionalInt.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        new Form.Whole(
            Mass.ofMilligrams(1000),
            MassFrom.LABEL,
            Optional.empty(),
            Stow.INSIDE,
            Optional.empty(),
            Optional.empty()));
  }

  private static List<Hiker> hikers(int count) {
    return IntStream.rangeClosed(1, count).mapToObj(TripIssuesTest::hiker).toList();
  }

  private static List<String> codes(List<Hiker> hikers, List<SharedItem> shared, List<Rule> rules) {
    return TripIssues.of(new Trip("Trip", 1, Policy.DEFAULT, hikers, shared, rules)).stream()
        .map(issue -> issue.code().text() + " " + issue.pointer())
        .toList();
  }

  @Test
  void listsAtTheirLimitsAreFine() {
    List<SharedItem> items =
        IntStream.rangeClosed(1, Limits.SHARED_ITEMS).mapToObj(i -> item(i, List.of())).toList();
    List<Rule> rules =
        IntStream.rangeClosed(1, Limits.RULES)
            .<Rule>mapToObj(i -> new Rule.Together("r" + i, List.of(PieceRef.item("s1"))))
            .toList();
    assertEquals(List.of(), codes(hikers(Limits.HIKERS), items, rules));
  }

  @Test
  void listsBeyondTheirLimitsAreNotWalked() {
    SharedItem nameless = item(1, List.of());
    List<String> covers = Collections.nCopies(Limits.COVERS_PER_ITEM + 1, "");
    assertEquals(
        List.of("too-many /hikers", "too-many /shared", "too-many /rules"),
        codes(
            Collections.nCopies(Limits.HIKERS + 1, hiker(1)),
            Collections.nCopies(Limits.SHARED_ITEMS + 1, nameless),
            Collections.nCopies(
                Limits.RULES + 1, new Rule.Together("r", List.of(PieceRef.item("x"))))));
    assertEquals(
        List.of("too-many /shared/0/covers"),
        codes(hikers(1), List.of(item(1, covers)), List.of()));
    assertEquals(
        List.of("too-many /rules/0/pieces"),
        codes(
            hikers(1),
            List.of(),
            List.of(
                new Rule.Together(
                    "r", Collections.nCopies(Limits.NAMES_PER_RULE + 1, PieceRef.item("x"))))));
  }
}
