package dev.faircarry.solve.take;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.choose.Answer;
import dev.faircarry.choose.Candidate;
import dev.faircarry.choose.Coverage;
import dev.faircarry.choose.Point;
import dev.faircarry.choose.Question;
import dev.faircarry.choose.Required;
import dev.faircarry.choose.Swap;
import dev.faircarry.solve.Watch;
import dev.faircarry.split.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The frontier against trying every choice, and cases worked out by hand. */
class ChooserTest {
  private static final long PLENTY = 1_000_000;

  @Test
  void frontierIsThatOfTryingAll() {
    int possible = 0;
    int impossible = 0;
    for (long seed = 0; seed < 400; seed++) {
      Question question = Questions.random(seed, 4, 5);
      NavigableMap<Long, Long> expected = TryingAll.frontier(question);
      Answer answer = Chooser.answer(question, PLENTY, Watch.NONE);
      if (expected.isEmpty()) {
        impossible++;
        Answer.Unmeetable unmeetable =
            assertInstanceOf(Answer.Unmeetable.class, answer, "seed " + seed);
        irreducible(question, unmeetable, "seed " + seed);
      } else {
        possible++;
        Answer.Choices choices = assertInstanceOf(Answer.Choices.class, answer, "seed " + seed);
        same(expected, question, choices, "seed " + seed);
      }
    }
    assertTrue(
        possible > 50 && impossible > 50, possible + " possible, " + impossible + " impossible");
  }

  private static void same(
      NavigableMap<Long, Long> expected,
      Question question,
      Answer.Choices choices,
      String message) {
    NavigableMap<Long, Long> found = new TreeMap<>();
    for (Point point : choices.frontier()) {
      found.put(point.priceHundredths(), point.massMilligrams());
      assertTrue(TryingAll.good(question, point.counts()), message);
      assertEquals(List.of(), Coverage.shortfalls(question, point.counts()), message);
      assertTrue(Coverage.inBounds(question, point.counts()), message);
      assertEquals(Point.of(question, point.counts()), point, message);
    }
    assertEquals(expected, found, message);
    assertEquals(expected.size(), choices.frontier().size(), message);
    assertTrue(choices.complete(), message);
    assertEquals(1, choices.massStepMilligrams(), message);
    Map.Entry<Long, Long> affordable =
        expected.floorEntry(question.budgetHundredths().orElse(Long.MAX_VALUE));
    assertEquals(
        Optional.ofNullable(affordable).map(Map.Entry::getValue),
        choices.chosen().map(Point::massMilligrams),
        message);
  }

  /** The needs named cannot be met together, and can as soon as any one of them is struck. */
  private static void irreducible(Question question, Answer.Unmeetable unmeetable, String message) {
    assertTrue(unmeetable.irreducible(), message);
    assertTrue(TryingAll.frontier(keeping(question, unmeetable.needs())).isEmpty(), message);
    for (String need : unmeetable.needs()) {
      List<String> others = new ArrayList<>(unmeetable.needs());
      others.remove(need);
      assertFalse(
          TryingAll.frontier(keeping(question, others)).isEmpty(), message + " without " + need);
    }
  }

  private static Question keeping(Question question, List<String> needs) {
    List<Required> kept = new ArrayList<>();
    for (Required need : question.needs()) {
      kept.add(
          needs.contains(need.need())
              ? need
              : new Required(need.need(), 0, need.room(), Map.of(), need.reason()));
    }
    return new Question(question.candidates(), kept, question.budgetHundredths());
  }

  @Test
  void swapsAreWhatBuyingOneThingSaves() {
    int swapsSeen = 0;
    for (long seed = 0; seed < 200; seed++) {
      Question question = Questions.random(seed, 5, 4);
      if (!(Chooser.answer(question, PLENTY, Watch.NONE) instanceof Answer.Choices choices)) {
        continue;
      }
      for (Swap swap : choices.swaps()) {
        swapsSeen++;
        List<Candidate> open = new ArrayList<>();
        for (int i = 0; i < question.candidates().size(); i++) {
          Candidate c = question.candidates().get(i);
          boolean shut = c.priceHundredths() > 0 && !c.ref().equals(swap.offer());
          open.add(shut ? most(c, choices.start().counts().get(i)) : c);
        }
        NavigableMap<Long, Long> frontier =
            TryingAll.frontier(new Question(open, question.needs(), OptionalLong.empty()));
        long lightest = frontier.lastEntry().getValue();
        String message = "seed " + seed + " " + swap.offer();
        assertEquals(lightest, swap.with().massMilligrams(), message);
        assertEquals(choices.start().massMilligrams() - lightest, swap.savedMilligrams(), message);
        assertEquals(
            frontier.lastEntry().getKey() - choices.start().priceHundredths(),
            swap.costHundredths(),
            message);
      }
      for (int i = 1; i < choices.swaps().size(); i++) {
        Swap better = choices.swaps().get(i - 1);
        Swap worse = choices.swaps().get(i);
        assertTrue(
            better.savedMilligrams() * Math.max(0, worse.costHundredths())
                >= worse.savedMilligrams() * Math.max(0, better.costHundredths()),
            "seed " + seed);
      }
    }
    assertTrue(swapsSeen > 30, swapsSeen + " swaps");
  }

  private static Candidate most(Candidate c, int most) {
    return new Candidate(
        c.ref(),
        c.kind(),
        c.name(),
        c.massMilligrams(),
        c.priceHundredths(),
        c.least(),
        most,
        c.party(),
        c.covers(),
        c.requires(),
        c.replaces(),
        c.free());
  }

  /** With one offer of each kind left out, nothing gets lighter for the same money. */
  @Test
  void moreOffersNeverHurt() {
    for (long seed = 0; seed < 60; seed++) {
      Question question = Questions.random(seed, 4, 6);
      List<Candidate> fewer = question.candidates().subList(0, question.candidates().size() - 1);
      Answer more = Chooser.answer(question, PLENTY, Watch.NONE);
      Answer less =
          Chooser.answer(
              new Question(fewer, question.needs(), question.budgetHundredths()),
              PLENTY,
              Watch.NONE);
      if (less instanceof Answer.Choices smaller) {
        Answer.Choices larger = assertInstanceOf(Answer.Choices.class, more, "seed " + seed);
        assertTrue(
            larger.frontier().get(0).massMilligrams() <= smaller.frontier().get(0).massMilligrams(),
            "seed " + seed);
      }
    }
  }

  @Test
  void sameQuestionSameAnswer() {
    Question question = Questions.random(3, 8, 12);
    assertEquals(
        Chooser.answer(question, PLENTY, Watch.NONE), Chooser.answer(question, PLENTY, Watch.NONE));
  }

  @Test
  void noEffortNoAnswer() {
    Question question = Questions.random(1, 6, 10);
    Answer answer = Chooser.answer(question, 0, Watch.NONE);
    assertInstanceOf(Answer.Undecided.class, answer);
  }

  @Test
  void aClockThatRanOutIsSaid() {
    Watch late =
        new Watch() {
          @Override
          public Signal signal() {
            return Signal.STOP_BY_CLOCK;
          }

          @Override
          public void progress(Progress progress) {}
        };
    Answer answer = Chooser.answer(Questions.random(1, 6, 10), PLENTY, late);
    assertEquals(new Answer.Undecided(0, true), answer);
  }

  @Test
  void tooManyThingsAreRefused() {
    List<Candidate> many = new ArrayList<>();
    for (int i = 0; i <= Chooser.MAX_CANDIDATES; i++) {
      many.add(thing("t" + i, 1, 0, Candidate.Kind.SHARED, Map.of(), Map.of()));
    }
    assertEquals(
        new Answer.TooLarge(1501, 1500),
        Chooser.answer(new Question(many, List.of(), OptionalLong.empty()), PLENTY, Watch.NONE));
  }

  /** Masses of ounces have no common unit and still are compared exactly; tonnes are not. */
  @Test
  void massStepIsStated() {
    Candidate light = thing("a", 1, 0, Candidate.Kind.SHARED, Map.of("x", 1L), Map.of());
    Candidate heavy =
        new Candidate(
            "b",
            Candidate.Kind.OFFER,
            "b",
            200_000_001,
            0,
            0,
            90,
            Optional.empty(),
            Map.of("x", 1L),
            Map.of(),
            List.of(),
            true);
    Required x = new Required("x", 1, false, Map.of(), "test");
    Answer.Choices choices =
        assertInstanceOf(
            Answer.Choices.class,
            Chooser.answer(
                new Question(List.of(light, heavy), List.of(x), OptionalLong.empty()),
                PLENTY,
                Watch.NONE));
    assertEquals(1000, choices.massStepMilligrams());
    assertEquals(1_000, choices.frontier().get(0).massMilligrams());
  }

  /** What a cut answer names is still right. */
  @Test
  void cutAnswersNameOnlyProvedPoints() {
    int cut = 0;
    for (long seed = 0; seed < 100; seed++) {
      Question question = Questions.random(seed, 4, 5);
      NavigableMap<Long, Long> expected = TryingAll.frontier(question);
      Answer answer = Chooser.answer(question, 40, Watch.NONE);
      if (answer instanceof Answer.Choices choices && !choices.complete()) {
        cut++;
        for (Point point : choices.frontier()) {
          assertEquals(
              expected.get(point.priceHundredths()), point.massMilligrams(), "seed " + seed);
        }
      }
    }
    assertTrue(cut > 5, cut + " cut");
  }

  @Test
  void nothingOfferedNothingAsked() {
    Answer.Choices choices =
        assertInstanceOf(
            Answer.Choices.class,
            Chooser.answer(
                new Question(List.of(), List.of(), OptionalLong.empty()), PLENTY, Watch.NONE));
    assertEquals(List.of(new Point(List.of(), 0, 0)), choices.frontier());
  }

  @Test
  void nothingOfferedForANeed() {
    Required light = new Required("light", 2, false, Map.of(), "test");
    Answer.Unmeetable answer =
        assertInstanceOf(
            Answer.Unmeetable.class,
            Chooser.answer(
                new Question(List.of(), List.of(light), OptionalLong.empty()), PLENTY, Watch.NONE));
    assertEquals(List.of("light"), answer.needs());
    assertEquals(2, answer.shortfalls().get(0).asked());
    assertEquals(0, answer.shortfalls().get(0).met());
  }

  /**
   * By hand: a 900 g tent that is there, or a 500 g shelter for 120.00 pitched with two poles
   * carried anyway.
   */
  @Test
  void shelterPitchedWithPolesCarriedAnyway() {
    Candidate tent = thing("tent", 900, 0, Candidate.Kind.SHARED, Map.of("sleeping", 2L), Map.of());
    Candidate poles =
        new Candidate(
            "asha/poles",
            Candidate.Kind.KIT,
            "Poles",
            480_000,
            0,
            1,
            1,
            Optional.of(""),
            Map.of("pole", 2L),
            Map.of(),
            List.of(),
            false);
    Candidate shelter =
        thing(
            "shelter",
            500,
            12_000,
            Candidate.Kind.OFFER,
            Map.of("sleeping", 2L),
            Map.of("pole", 2L));
    Required sleeping = new Required("sleeping", 2, false, Map.of(), "test");
    Required pole = new Required("pole", 0, false, Map.of(), "test");
    Question with =
        new Question(
            List.of(tent, poles, shelter), List.of(sleeping, pole), OptionalLong.of(11_999));
    Answer.Choices choices =
        assertInstanceOf(Answer.Choices.class, Chooser.answer(with, PLENTY, Watch.NONE));
    assertEquals(
        List.of(List.of(0, 1, 1), List.of(1, 1, 0)),
        choices.frontier().stream().map(Point::counts).toList());
    assertEquals(Optional.of(List.of(1, 1, 0)), choices.chosen().map(Point::counts));
    assertEquals(400_000, choices.swaps().get(0).savedMilligrams());
    Question without =
        new Question(List.of(tent, shelter), List.of(sleeping, pole), OptionalLong.empty());
    Answer.Choices tentOnly =
        assertInstanceOf(Answer.Choices.class, Chooser.answer(without, PLENTY, Watch.NONE));
    assertEquals(List.of(List.of(1, 0)), tentOnly.frontier().stream().map(Point::counts).toList());
  }

  private static Candidate thing(
      String ref,
      int grams,
      long price,
      Candidate.Kind kind,
      Map<String, Long> covers,
      Map<String, Long> requires) {
    return new Candidate(
        ref,
        kind,
        ref,
        grams * 1000L,
        price,
        0,
        1,
        Optional.empty(),
        covers,
        requires,
        List.of(),
        true);
  }
}
