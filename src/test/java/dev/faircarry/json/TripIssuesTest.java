package dev.faircarry.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.Issue;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is an issue of a trip document, where, and what is none. */
class TripIssuesTest {
  private static final String HIKER = "{\"id\": \"a\", \"targetLoad\": \"9 kg\"}";
  private static final String POT = "{\"id\": \"pot\", \"mass\": \"410 g\"}";

  private static String trip(int days, String hikers, String shared, String rules) {
    return """
    {"format": "faircarry-trip/1", "name": "Two tarns", "days": %d,
     "hikers": [%s], "shared": [%s], "rules": [%s]}
    """
        .formatted(days, hikers, shared, rules);
  }

  private static List<String> codes(String document) {
    return Documents.codes(Documents.issues(document));
  }

  private static List<String> ofHiker(String fields) {
    return codes(trip(3, "{\"id\": \"a\", " + fields + "}", "", ""));
  }

  private static List<String> ofShared(String fields) {
    return codes(trip(3, HIKER, "{\"id\": \"x\", " + fields + "}", ""));
  }

  private static List<String> ofRule(String fields) {
    return codes(
        trip(
            3,
            "{\"id\": \"a\", \"targetLoad\": \"9 kg\", \"party\": \"front\"}",
            POT + ", {\"id\": \"tent\", \"parts\": [{\"id\": \"fly\", \"mass\": \"1 kg\"}]}",
            "{" + fields + "}"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      textBlock =
          """
          "bodyMass": "5 kg"                                     | ''
          "bodyMass": "400 kg"                                   | ''
          "bodyMass": "4.999999 kg"                              | out-of-range /hikers/0/bodyMass
          "bodyMass": "400.000001 kg"                            | out-of-range /hikers/0/bodyMass
          "targetLoad": "100 g"                                  | ''
          "targetLoad": "99.999 g"                               | out-of-range /hikers/0/targetLoad
          "targetLoad": "200.000001 kg"                          | out-of-range /hikers/0/targetLoad
          "targetLoad": "1 kg", "targetFraction": 0.01           | ''
          "targetLoad": "1 kg", "targetFraction": 0.009999       | out-of-range /hikers/0/targetFraction
          "targetLoad": "1 kg", "capFraction": 1.0               | ''
          "targetLoad": "1 kg", "capFraction": 1.000001          | out-of-range /hikers/0/capFraction
          "targetLoad": "1 kg", "capFraction": 0.1234567         | out-of-range /hikers/0/capFraction
          "targetLoad": "1 kg", "capFraction": "0.2"             | wrong-type /hikers/0/capFraction
          "targetLoad": "1 kg", "capLoad": "200.1 kg"            | out-of-range /hikers/0/capLoad
          "targetLoad": "1 kg", "maxPieces": 0                   | ''
          "targetLoad": "1 kg", "maxPieces": 1001                | out-of-range /hikers/0/maxPieces
          "targetLoad": "1 kg", "maxPieces": 1.5                 | wrong-type /hikers/0/maxPieces
          "targetLoad": "1 kg", "maxPieces": 8.0                 | ''
          "targetLoad": "1 kg", "leavesAfterDay": 3              | ''
          "targetLoad": "1 kg", "leavesAfterDay": 4              | no-such-day /hikers/0/leavesAfterDay
          "targetLoad": "1 kg", "minor": 1                       | wrong-type /hikers/0/minor
          "targetLoad": "1 kg", "party": " "                     | empty-text /hikers/0/party
          "targetLoad": "1 kg", "party": null                    | wrong-type /hikers/0/party
          "targetLoad": "1 kg", "pack": {"volume": "40 L"}       | missing /hikers/0/pack/mass
          "targetLoad": "1 kg", "pack": {"mass": "1 kg", "volume": "1000.1 L"} | out-of-range /hikers/0/pack/volume
          "targetLoad": "1 kg", "pack": "1 kg"                   | wrong-type /hikers/0/pack
          "targetLoad": "1 kg", "kit": [{"mass": "1 g"}]         | missing /hikers/0/kit/0/name
          "targetLoad": "1 kg", "kit": [{"id": "k", "mass": "1 g", "cost": "1,5"}] | not-a-quantity /hikers/0/kit/0/cost
          "targetLoad": "1 kg", "kit": [{"id": "k", "mass": "1 g", "use": {"kind": "units-per-day", "perDay": 1}}] | unknown-word /hikers/0/kit/0/use/kind
          "targetLoad": "1 kg", "kit": [{"id": "k", "mass": "1 g"}, {"id": "k", "mass": "1 g"}] | duplicate-id /hikers/0/kit/1/id
          "targetLoad": "1 kg", "kit": [{"id": "k", "mass": "1 g", "covers": ["light", "light"]}] | duplicate-name /hikers/0/kit/0/covers/1
          """)
  void hikers(String fields, String expected) {
    assertEquals(expected.isEmpty() ? List.of() : List.of(expected), ofHiker(fields));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      textBlock =
          """
          "mass": "0 g"                                          | ''
          "mass": "200 kg"                                       | ''
          "mass": "200.000001 kg"                                | out-of-range /shared/0/mass
          "mass": 410                                            | wrong-type /shared/0/mass
          "name": "X"                                            | missing /shared/0/mass
          "mass": "1 kg", "unitMass": "1 kg"                     | unknown-field /shared/0/unitMass
          "unitMass": "1 kg"                                     | missing /shared/0/count
          "count": 2                                             | missing /shared/0/unitMass
          "count": 0, "unitMass": "1 g"                          | out-of-range /shared/0/count
          "count": 1000, "unitMass": "1 g"                       | ''
          "count": 1001, "unitMass": "1 g"                       | out-of-range /shared/0/count
          "count": 1e300, "unitMass": "1 g"                      | out-of-range /shared/0/count
          "count": 2, "perPerson": {"countPerDay": 1}, "unitMass": "1 g" | conflicting-fields /shared/0
          "perPerson": {}, "unitMass": "1 g"                     | missing /shared/0/perPerson/countPerDay
          "perPerson": 2, "unitMass": "1 g"                      | wrong-type /shared/0/perPerson
          "perPerson": {"countPerDay": 333}, "unitMass": "1 g"   | ''
          "perPerson": {"countPerDay": 334}, "unitMass": "1 g"   | too-many-pieces /shared
          "perPerson": {"countPerDay": 1000}, "unitMass": "1 g", "onDays": [2] | ''
          "parts": []                                            | empty-list /shared/0/parts
          "parts": [{"id": "p", "mass": "1 g", "use": {"kind": "evenly"}}] | unknown-field /shared/0/parts/0/use
          "parts": [{"id": "p", "mass": "1 g"}, {"id": "p", "mass": "1 g"}] | duplicate-id /shared/0/parts/1/id
          "mass": "1 g", "sleeps": 101                           | out-of-range /shared/0/sleeps
          "mass": "1 g", "onDays": []                            | empty-list /shared/0/onDays
          "mass": "1 g", "onDays": [0]                           | no-such-day /shared/0/onDays/0
          "mass": "1 g", "onDays": [1, 1]                        | days-not-rising /shared/0/onDays/1
          "mass": "1 g", "onDays": [1, 3]                        | ''
          "mass": "1 g", "onDays": ["1", 1]                      | wrong-type /shared/0/onDays/0
          "mass": "1 g", "use": {"kind": "evenly", "leaves": "1 g"} | ''
          "mass": "1 g", "use": {"kind": "evenly", "perDay": 1}  | unknown-field /shared/0/use/perDay
          "mass": "x", "use": {"kind": "evenly", "leaves": "1 kg"} | not-a-quantity /shared/0/mass
          "mass": "1 g", "use": {}                               | missing /shared/0/use/kind
          "count": 4, "unitMass": "1 g", "use": {"kind": "units-per-day"} | missing /shared/0/use/perDay
          "count": 4, "unitMass": "1 g", "use": {"kind": "units-per-day", "perDay": [2, 0, 2]} | ''
          "count": 4, "unitMass": "1 g", "use": {"kind": "units-per-day", "perDay": [2, -1, 2]} | out-of-range /shared/0/use/perDay/1
          "count": 4, "unitMass": "1 g", "use": {"kind": "units-per-day", "perDay": "2"} | wrong-type /shared/0/use/perDay
          "count": 4, "unitMass": "1 g", "use": {"kind": "units-per-day", "perDay": 1, "leaves": "2 g"} | leaves-too-much /shared/0/use/leaves
          "mass": "1 g", "contains": {"kind": "food"}            | missing /shared/0/contains/volume
          "mass": "1 g", "massFrom": "guess"                     | unknown-word /shared/0/massFrom
          """)
  void sharedItems(String fields, String expected) {
    assertEquals(expected.isEmpty() ? List.of() : List.of(expected), ofShared(fields));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      textBlock =
          """
          "kind": "pinned", "pieces": ["pot"], "hiker": "a"             | ''
          "kind": "pinned", "pieces": ["pot"], "hiker": "b"             | unknown-hiker /rules/0/hiker
          "kind": "pinned", "pieces": ["pot"], "hikers": ["a"]          | missing /rules/0/hiker;unknown-field /rules/0/hikers
          "kind": "only", "pieces": ["tent/fly"], "hikers": ["a"]       | ''
          "kind": "only", "pieces": ["tent/pole"], "hikers": ["a", "a"] | duplicate-name /rules/0/hikers/1;unknown-piece /rules/0/pieces/0
          "kind": "barred", "pieces": ["pot/lid"], "hikers": []         | empty-list /rules/0/hikers;unknown-piece /rules/0/pieces/0
          "kind": "barred", "pieces": ["pot"]                           | missing /rules/0/hikers
          "kind": "together", "pieces": ["pot", "tent"]                 | ''
          "kind": "together", "pieces": "pot"                           | wrong-type /rules/0/pieces
          "kind": "apart", "pieces": ["pot", "tent/fly"]                | ''
          "kind": "apart", "pieces": ["tent/fly", "tent"]               | overlap /rules/0/pieces/1
          "kind": "party-has", "covers": "light"                        | ''
          "kind": "party-has", "covers": "light", "parties": ["front"]  | ''
          "kind": "party-has", "covers": "light", "atLeast": 0          | out-of-range /rules/0/atLeast
          "kind": "party-has", "parties": ["back", "back"]              | missing /rules/0/covers;unknown-party /rules/0/parties/0;duplicate-name /rules/0/parties/1;unknown-party /rules/0/parties/1
          "kind": "near", "pieces": ["nothing"]                         | unknown-word /rules/0/kind
          "pieces": ["nothing"]                                         | missing /rules/0/kind
          """)
  void rules(String fields, String expected) {
    List<String> all = expected.isEmpty() ? List.of() : List.of(expected.split(";"));
    assertEquals(all.stream().sorted().toList(), ofRule(fields).stream().sorted().toList(), fields);
  }

  @Test
  void oddButSensibleTripsHaveNoIssues() {
    assertEquals(List.of(), codes(trip(1, HIKER, "", "")));
    assertEquals(List.of(), codes(trip(30, HIKER, POT, "")));
    assertEquals(
        List.of(),
        codes(
            trip(
                1,
                "{\"id\": \"a\", \"name\": \"رفيق الطريق 🏔\", \"bodyMass\": \"70 kg\"}",
                "",
                "")));
    // A family of four code points that show as one: joiners are no control characters.
    assertEquals(
        List.of(), codes(trip(1, "{\"name\": \"👨‍👩‍👧‍👦\", \"bodyMass\": \"70 kg\"}", "", "")));
  }

  @Test
  void rulesThatCannotAllHoldAreNoIssue() {
    assertEquals(
        List.of(),
        codes(
            trip(
                1,
                HIKER,
                POT + ", {\"id\": \"lid\", \"mass\": \"9 g\"}",
                """
                {"kind": "pinned", "pieces": ["pot"], "hiker": "a"},
                {"kind": "barred", "pieces": ["pot"], "hikers": ["a"]},
                {"kind": "apart", "pieces": ["pot", "lid"]}
                """)));
  }

  @Test
  void limitsOfTheTripItself() {
    assertEquals(List.of("out-of-range /days"), codes(trip(0, HIKER, "", "")));
    // With days out of range no day can be judged.
    assertEquals(
        List.of("out-of-range /days"),
        codes(trip(31, HIKER, "{\"id\": \"x\", \"mass\": \"1 g\", \"onDays\": [40]}", "")));
    String hikers =
        IntStream.range(0, 101)
            .mapToObj(i -> "{\"id\": \"h" + i + "\", \"targetLoad\": \"9 kg\"}")
            .collect(Collectors.joining(","));
    // The owner is the one too many: that he is unknown is no second issue.
    assertEquals(
        List.of("too-many /hikers"),
        codes(trip(1, hikers, "{\"id\": \"x\", \"mass\": \"1 g\", \"owner\": \"h100\"}", "")));
  }

  @Test
  void nobodyIsLeft() {
    String early = "{\"id\": \"a\", \"targetLoad\": \"9 kg\", \"leavesAfterDay\": 2}";
    assertEquals(List.of("nobody-present /hikers"), codes(trip(3, early, "", "")));
    assertEquals(
        List.of(), codes(trip(3, early + ", {\"id\": \"b\", \"targetLoad\": \"9 kg\"}", "", "")));
  }

  @Test
  void perPersonCountsFollowTheParty() {
    // 2 days x 2 people + 1 day x 1 = 5 person-days; 5 x 200 = 1000 pieces, 5 x 201 are too many.
    String two = HIKER + ", {\"id\": \"b\", \"targetLoad\": \"9 kg\", \"leavesAfterDay\": 2}";
    String shared = "{\"id\": \"x\", \"perPerson\": {\"countPerDay\": %d}, \"unitMass\": \"1 g\"}";
    assertEquals(List.of(), codes(trip(3, two, shared.formatted(200), "")));
    assertEquals(
        List.of("too-many-pieces /shared"), codes(trip(3, two, shared.formatted(201), "")));
  }

  @Test
  void anythingThatContainsTheKindIsAContainer() {
    String food = "{\"id\": \"x\", \"mass\": \"1 kg\", \"goesInto\": \"food\"}";
    String box = "\"contains\": {\"kind\": \"food\", \"volume\": \"9 L\"}";
    assertEquals(List.of("no-container /shared/0/goesInto"), codes(trip(1, HIKER, food, "")));
    assertEquals(
        List.of(),
        codes(trip(1, HIKER, food + ", {\"id\": \"b\", \"mass\": \"1 kg\", " + box + "}", "")));
    String kit =
        "{\"id\": \"a\", \"targetLoad\": \"9 kg\", \"kit\": [{\"id\": \"b\", \"mass\": \"1 g\", ";
    assertEquals(List.of(), codes(trip(1, kit + box + "}]}", food, "")));
    // A container that cannot be read may be the one: only its own fault is told.
    assertEquals(
        List.of("missing /shared/1/contains/kind"),
        codes(
            trip(
                1,
                HIKER,
                food + ", {\"id\": \"b\", \"mass\": \"1 kg\", \"contains\": {\"volume\": \"9 L\"}}",
                "")));
  }

  @Test
  void issuesOfAllKindsComeTogetherInTheOrderOfPlaces() {
    // Whether day 7, the owner and a container exist cannot be said while the days and a hiker are
    // unreadable, so that is not held against the document.
    assertEquals(
        List.of(
            "wrong-type /days",
            "no-unit /hikers/0/bodyMass",
            "unknown-unit /hikers/0/pack/volume",
            "duplicate-id /hikers/1/id",
            "wrong-type /hikers/2",
            "missing /name",
            "unknown-piece /rules/0/pieces/0",
            "unknown-field /season",
            "negative /shared/0/mass",
            "days-not-rising /shared/0/onDays/1",
            "use-with-days /shared/0/use"),
        codes(
            """
            {"format": "faircarry-trip/1", "days": "two", "season": "autumn",
             "hikers": [
               {"id": "a", "bodyMass": "58", "pack": {"mass": "1 kg", "volume": "45 stones"}},
               {"id": "a", "targetLoad": "9 kg", "leavesAfterDay": 7},
               "ruth"],
             "shared": [{"id": "x", "mass": "-1 g", "goesInto": "food", "owner": "nobody",
                         "use": {"kind": "evenly"}, "onDays": [2, 1]}],
             "rules": [{"kind": "together", "pieces": ["y"]}]}
            """));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"id\": \"a\", \"bodyMass\": 87654}",
        "{\"id\": \"a\", \"bodyMass\": \"87654\"}",
        "{\"id\": \"a\", \"bodyMass\": \"87654 kg\"}",
        "{\"id\": \"a\", \"bodyMass\": \"87654 stones\"}",
        "{\"id\": \"a\", \"bodyMass\": [\"87654 kg\"]}",
        "{\"id\": \"a\", \"bodyMass\": {\"kg\": 87654}}",
        "{\"id\": \"a\", \"targetLoad\": \"87654 g\", \"targetLoad\": \"87654 kg\"}",
        "{\"id\": \"a\", \"targetLoad\": \"-87654 kg\"}",
        "{\"id\": \"a\", \"bodymass\": \"87654 kg\"}",
        "{\"id\": \"a\", \"weight\": 87654}",
        "\"87654 kg\"",
        "87654",
        "{\"id\": \"a\", \"bodyMass\": 87654 kg}"
      })
  void bodyMassesAndTargetLoadsAreNeverTold(String hiker) {
    List<Issue> issues = Documents.issues(trip(1, hiker, "", ""));
    assertFalse(issues.isEmpty());
    assertEquals(-1, issues.toString().indexOf("87654"), issues.toString());
  }

  @Test
  void issuesNameValueLimitAndRemedy() {
    Issue issue = Documents.issues(trip(31, HIKER, "", "")).get(0);
    assertEquals("31", issue.value());
    assertTrue(issue.message().contains("1 to 30"), issue.message());
    assertTrue(issue.remedy().contains("1 to 30"), issue.remedy());
    Issue stow =
        Documents.issues(
                trip(1, HIKER, "{\"id\": \"x\", \"mass\": \"1 g\", \"stow\": \"pocket\"}", ""))
            .get(0);
    assertEquals("pocket", stow.value());
    assertEquals("Use one of at-hand, top, inside, outside, bottom.", stow.remedy());
  }
}
