package dev.faircarry.json;

import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.Issue;
import dev.faircarry.check.IssueCode;
import dev.faircarry.csv.Table;
import dev.faircarry.csv.TableIssues;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Each code of the index has a sample that gives this code, at the place that is wrong, and no
 * other.
 */
class IssueSamplesTest {
  private static final Map<String, String> PLACES =
      Map.ofEntries(
          entry("bad-id", "/hikers/0/id"),
          entry("bad-text", "/name"),
          entry("conflicting-fields", "/shared/0"),
          entry("days-not-rising", "/shared/0/onDays/1"),
          entry("document-too-large", ""),
          entry("duplicate-field", "/days"),
          entry("duplicate-id", "/hikers/1/id"),
          entry("duplicate-name", "/rules/0/pieces/1"),
          entry("empty-group", "/hikers"),
          entry("empty-list", "/rules/0/pieces"),
          entry("empty-text", "/name"),
          entry("contradiction", "/plan/route/0/descent"),
          entry("unknown-thing", "/plan/taking/keep/0"),
          entry("leaves-too-much", "/shared/0/use/leaves"),
          entry("missing", "/days"),
          entry("need-units-differ", "/plan/taking/offers/0/covers/0/amount"),
          entry("negative", "/shared/0/mass"),
          entry("no-container", "/shared/0/goesInto"),
          entry("no-such-day", "/shared/0/onDays/0"),
          entry("no-target", "/hikers/0"),
          entry("no-unit", "/shared/0/mass"),
          entry("nobody-present", "/hikers"),
          entry("not-a-quantity", "/shared/0/mass"),
          entry("not-json", ""),
          entry("not-csv", "shared, row 2"),
          entry("not-utf-8", ""),
          entry("out-of-range", "/shared/0/mass"),
          entry("overlap", "/rules/0/pieces/1"),
          entry("ragged-row", "shared, row 2"),
          entry("text-too-long", "/name"),
          entry("too-deep", ""),
          entry("too-many", "/shared/0/covers"),
          entry("too-many-pieces", "/shared"),
          entry("unknown-field", "/season"),
          entry("unknown-format", "/format"),
          entry("unknown-hiker", "/shared/0/owner"),
          entry("unknown-party", "/rules/0/parties/0"),
          entry("unknown-piece", "/rules/0/pieces/0"),
          entry("unknown-unit", "/shared/0/mass"),
          entry("unknown-word", "/hikers/0/kit/0/stow"),
          entry("use-with-days", "/shared/0/use"),
          entry("wrong-length", "/shared/0/use/perDay"),
          entry("wrong-type", "/days"));

  @ParameterizedTest
  @EnumSource(IssueCode.class)
  void sampleGivesItsCodeAtItsPlaceAndNoOther(IssueCode code) {
    List<Issue> issues =
        IssueSamples.isTable(code)
            ? TableIssues.of(Table.SHARED, IssueSamples.of(code))
            : Documents.issues(TripReader.read(IssueSamples.of(code)));
    assertEquals(
        List.of(code.text() + " " + PLACES.get(code.text())),
        IssueSamples.isTable(code)
            ? issues.stream().map(i -> i.code().text() + " " + i.place()).toList()
            : Documents.codes(issues),
        code.text());
  }

  @ParameterizedTest
  @EnumSource(IssueCode.class)
  void wordsOfTheIndexAreWholeSentences(IssueCode code) {
    for (String sentence : List.of(code.meaning(), code.remedy())) {
      assertTrue(sentence.endsWith("."), sentence);
      assertTrue(Character.isUpperCase(sentence.charAt(0)), sentence);
    }
    assertFalse(code.meaning().equals(code.remedy()), code.text());
  }

  @Test
  void placesAreListedForJustTheCodesThereAre() {
    assertEquals(
        Arrays.stream(IssueCode.values()).map(IssueCode::text).collect(Collectors.toSet()),
        Set.copyOf(PLACES.keySet()));
  }
}
