package dev.faircarry.choose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import dev.faircarry.check.TripIssues;
import dev.faircarry.json.Reading;
import dev.faircarry.json.TripReader;
import dev.faircarry.solve.Watch;
import dev.faircarry.solve.take.Chooser;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.plan.Plan;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** From a trip document to the question what to take, and back; numbers worked out by hand. */
class AskingTest {
  private static final Trip TRIP = resource("/trips/plan-everything.json");
  private static final Question QUESTION = Asking.of(TRIP);

  private static Trip resource(String path) {
    try (InputStream in = Objects.requireNonNull(AskingTest.class.getResourceAsStream(path))) {
      return read(in.readAllBytes());
    } catch (IOException e) {
      throw new AssertionError(path, e);
    }
  }

  private static Trip read(byte[] document) {
    Reading<Trip> reading = TripReader.read(document);
    return reading instanceof Reading.Read<Trip> good ? good.value() : fail(reading.toString());
  }

  private static Trip read(String document) {
    return read(document.replace('\'', '"').getBytes(StandardCharsets.UTF_8));
  }

  private static Candidate candidate(Question question, String ref) {
    return question.candidates().stream()
        .filter(c -> c.ref().equals(ref))
        .findFirst()
        .orElseThrow();
  }

  private static Required need(Question question, String name) {
    return question.needs().stream().filter(n -> n.need().equals(name)).findFirst().orElseThrow();
  }

  /**
   * Two people, three days, one party: the defaults, and the plan's own in place of two of them.
   */
  @Test
  void needs() {
    assertEquals(2, need(QUESTION, "sleeping").atLeast());
    assertEquals(1200, need(QUESTION, "pot").atLeast());
    assertTrue(need(QUESTION, "pot").room());
    assertEquals("stated in the plan", need(QUESTION, "pot").reason());
    assertEquals(1, need(QUESTION, "flame").atLeast());
    assertEquals(2, need(QUESTION, "water-treatment").atLeast());
    assertEquals(Map.of("one", 1), need(QUESTION, "first-aid").perParty());
    assertEquals(2, need(QUESTION, "light").atLeast());
    assertFalse(need(QUESTION, "pole").asks());
    assertTrue(need(QUESTION, "repair").reason().startsWith("common practice"));
  }

  @Test
  void whatMayStay() {
    assertTrue(candidate(QUESTION, "tent").free());
    assertEquals(Map.of("sleeping", 2L), candidate(QUESTION, "tent").covers());
    assertEquals(1, candidate(QUESTION, "repair").least(), "kept");
    assertEquals(1, candidate(QUESTION, "ines/poles").least(), "worn");
    assertEquals(1, candidate(QUESTION, "jo/lamp").least(), "kept");
    Candidate quilt = candidate(QUESTION, "ines/quilt");
    assertFalse(quilt.free());
    assertEquals(0, quilt.least(), "an offer replaces it");
    assertEquals(Map.of("pot", 1500L), candidate(QUESTION, "pot").covers());
    assertEquals(Optional.of("one"), candidate(QUESTION, "light-quilt").party());
    assertEquals(Optional.empty(), candidate(QUESTION, "shelter").party());
  }

  /** Of the two first aid kits one can stay; everything else is needed as it is. */
  @Test
  void doubles() {
    assertEquals(
        List.of(
            new Doubled(
                "first-aid",
                1,
                2,
                List.of("first-aid", "ines/kit-a"),
                List.of("first-aid", "ines/kit-a"))),
        Doubled.in(QUESTION));
  }

  /**
   * Always 1,145 g: stove, filter, tablets, map, small first aid, repair, two lamps, poles. Then
   * the pot (300 g, or 180 g for 30.00), the quilt (900 g, or 600 g for 240.00) and a roof (2,400
   * g, or 520 g for 210.00).
   */
  @Test
  void frontier() {
    Answer.Choices choices =
        assertInstanceOf(Answer.Choices.class, Chooser.answer(QUESTION, 1_000_000, Watch.NONE));
    assertEquals(
        List.of(
            "2445000 for 48000",
            "2565000 for 45000",
            "2745000 for 24000",
            "2865000 for 21000",
            "4625000 for 3000",
            "4745000 for 0"),
        choices.frontier().stream()
            .map(p -> p.massMilligrams() + " for " + p.priceHundredths())
            .toList());
    assertEquals(2_745_000, choices.chosen().orElseThrow().massMilligrams());
    assertEquals(
        List.of("shelter 1880000 21000", "small-pot 120000 3000", "light-quilt 300000 24000"),
        choices.swaps().stream()
            .map(s -> s.offer() + " " + s.savedMilligrams() + " " + s.costHundredths())
            .toList());
    Changes changes = Changes.of(QUESTION, choices.chosen().orElseThrow());
    assertEquals(
        List.of(new Changes.Counted("shelter", 1), new Changes.Counted("small-pot", 1)),
        changes.bought());
    assertEquals(List.of("tent", "pot", "first-aid"), changes.leftAtHome());
    assertEquals(
        List.of(new Changes.Pair("shelter", "tent"), new Changes.Pair("small-pot", "pot")),
        changes.swapped());
  }

  @Test
  void applied() {
    Answer.Choices choices = (Answer.Choices) Chooser.answer(QUESTION, 1_000_000, Watch.NONE);
    Trip after = Applied.to(TRIP, QUESTION, choices.frontier().get(0)).trip();
    assertEquals(
        List.of("stove", "filter", "tablets", "map", "repair", "shelter", "small-pot"),
        after.shared().stream().map(SharedItem::id).toList());
    SharedItem shelter = after.shared().get(5);
    assertEquals(OptionalInt.of(2), shelter.sleeps());
    assertEquals(Optional.of("jo"), shelter.owner());
    assertEquals(520_000, ((Form.Whole) shelter.form()).mass().milligrams());
    Hiker ines = after.hikers().get(0);
    assertEquals(
        List.of("lamp", "poles", "kit-a", "light-quilt"),
        ines.kit().stream().map(KitItem::id).toList());
    assertEquals(List.of(), after.plan().flatMap(Plan::taking).orElseThrow().offers());
    Question again = Asking.of(after);
    assertEquals(List.of(), Coverage.shortfalls(again, again.present()));
  }

  /**
   * 4.2 L are asked for. Two pots of 2.1 L each hold as much, and a pan that is 3 L outside holds
   * its 2.1 L: after the choice as before it, nothing is missing and nothing too much is promised.
   */
  @Test
  void whatAChosenPotHoldsItHoldsAfterwards() {
    String asks =
        "{'format':'faircarry-trip/1','name':'n','days':1,'hikers':[{'id':'a','targetLoad':'9 kg'}],"
            + "'plan':{'taking':{'needs':[{'covers':'pot','atLeast':'4.2 L'},{'covers':'flame','atLeast':0},{'covers':'repair','atLeast':0},"
            + "{'covers':'water-treatment','atLeast':0},{'covers':'navigation','atLeast':0},{'covers':'light','atLeast':0},"
            + "{'covers':'first-aid','atLeast':0},{'covers':'sleeping','atLeast':0}],'offers':[";
    String holds = ",'covers':[{'need':'pot','amount':'2.1 L'}]}";
    for (String offers :
        List.of(
            "{'id':'pot','mass':'300 g','available':2" + holds,
            "{'id':'pot','mass':'300 g'"
                + holds
                + ",{'id':'pan','mass':'300 g','volume':'3 L'"
                + holds,
            "{'id':'pot','mass':'300 g','forHiker':'a','available':2" + holds)) {
      Trip trip = read(asks + offers + "]}}}");
      Question question = Asking.of(trip);
      Answer.Choices choices =
          assertInstanceOf(Answer.Choices.class, Chooser.answer(question, 1000, Watch.NONE));
      Trip after = Applied.to(trip, question, choices.frontier().get(0)).trip();
      assertEquals(List.of(), TripIssues.of(after), offers);
      Question again = Asking.of(after);
      assertEquals(List.of(), Coverage.shortfalls(again, again.present()), offers);
      assertEquals(
          List.of(2100L, 2100L),
          again.candidates().stream().map(c -> c.covers().get("pot")).toList(),
          offers);
    }
  }

  @Test
  void rulesLoseWhatStaysAtHome() {
    Trip trip =
        read(
            "{'format':'faircarry-trip/1','name':'n','days':1,'hikers':[{'id':'a','targetLoad':'9"
                + " kg'},{'id':'b','targetLoad':'9"
                + " kg','party':'x'}],'shared':[{'id':'f1','mass':'100"
                + " g','covers':['first-aid']},{'id':'f2','mass':'90"
                + " g','covers':['first-aid']},{'id':'f3','mass':'300"
                + " g','covers':['first-aid']},{'id':'z','mass':'1 kg'}],"
                + "'rules':[{'id':'r1','kind':'apart','pieces':['f1','f3']},{'id':'r2','kind':'together','pieces':['z','f1','f3']},"
                + "{'id':'r3','kind':'pinned','pieces':['f3'],'hiker':'a'},{'id':'r4','kind':'barred','pieces':['z','f3'],'hikers':['a']},"
                + "{'id':'r5','kind':'party-has','covers':'first-aid','parties':['x'],'atLeast':2}],"
                + "'plan':{'taking':{'needs':[{'covers':'pot','atLeast':0},{'covers':'flame','atLeast':0},{'covers':'repair','atLeast':0},"
                + "{'covers':'water-treatment','atLeast':0},{'covers':'navigation','atLeast':0},{'covers':'light','atLeast':0},"
                + "{'covers':'first-aid','atLeast':1}]}}}");
    Question question = Asking.of(trip);
    assertEquals(Map.of("x", 2), need(question, "first-aid").perParty());
    Answer.Choices choices = (Answer.Choices) Chooser.answer(question, 1000, Watch.NONE);
    assertEquals(List.of("f3"), Changes.of(question, choices.frontier().get(0)).leftAtHome());
    Applied applied = Applied.to(trip, question, choices.frontier().get(0));
    assertEquals(List.of("r1", "r2", "r3", "r4"), applied.changedRules());
    assertEquals(
        List.of("r2", "r4", "r5"), applied.trip().rules().stream().map(r -> r.id()).toList());
  }

  /**
   * Food that must go into a container asks for its room on the first morning: 4 units of 2 L for
   * two people.
   */
  @Test
  void landManagersOrderAsksForContainers() {
    Trip trip =
        read(
            "{'format':'faircarry-trip/1','name':'n','days':2,'hikers':[{'id':'a','targetLoad':'9"
                + " kg'},{'id':'b','targetLoad':'9"
                + " kg'}],'shared':[{'id':'food','perPerson':{'countPerDay':1},'unitMass':'700"
                + " g','unitVolume':'2"
                + " L','goesInto':'food','use':{'kind':'units-per-day'}},{'id':'can','mass':'1"
                + " kg','contains':{'kind':'food','volume':'9 L'}}]}");
    Question question = Asking.of(trip);
    assertEquals(8000, need(question, "food").atLeast());
    assertEquals(Map.of("food", 9000L), candidate(question, "can").covers());
  }

  @Test
  void needsNothingCoversAreNamed() {
    Trip trip =
        read(
            "{'format':'faircarry-trip/1','name':'n','days':1,'hikers':[{'id':'a','targetLoad':'9"
                + " kg'}],'shared':[{'id':'z','mass':'1 kg'}]}");
    Answer.Unmeetable answer =
        assertInstanceOf(
            Answer.Unmeetable.class, Chooser.answer(Asking.of(trip), 1000, Watch.NONE));
    assertEquals(
        List.of("pot", "flame", "water-treatment", "first-aid", "navigation", "light", "repair"),
        answer.shortfalls().stream().map(Shortfall::need).distinct().toList());
  }
}
