package dev.faircarry.check;

import static dev.faircarry.check.Judged.breaks;
import static dev.faircarry.check.Judged.keeps;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.faircarry.fixture.HikerOf.Thing;
import dev.faircarry.fixture.Splits;
import dev.faircarry.fixture.Trips;
import dev.faircarry.trip.PieceRef;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The numbers and names that findings tell, worked out by hand. */
class NumbersInFindingsTest {
  private static Trips two() {
    return Trips.targets(9000, 9000);
  }

  private static List<String> messages(Verdict verdict) {
    return verdict.findings().stream().map(Finding::message).toList();
  }

  private static Trips food() {
    return Trips.days(2)
        .hiker("a", h -> h.target(9000).kit(new Thing("tin", 1).contains("food", 4)))
        .hiker("b", h -> h.target(9000).kit(new Thing("tin", 1).contains("food", 50)))
        .item("u", s -> s.count(3).mass(1).volume(5).goesInto("food"))
        .item("v", s -> s.mass(1).volume(2).goesInto("food"));
  }

  /** 10 mL into a tin of 4 mL: 6 too many, on both mornings; what b has is not named. */
  @Test
  void howMuchMoreThanFits() {
    Finding found =
        breaks(FindingCode.NO_CONTAINER, food(), Splits.of("a", "u*2").and("b", "u", "v"));
    assertEquals(List.of(PieceRef.of("u")), found.pieces());
    assertEquals(List.of(1, 2), found.days());
    assertEquals(
        "a carries things that go into a container of kind “food” on days 1 to 2, 6 mL more than"
            + " fit into the ones held.",
        found.message());
  }

  /** What takes no room fits into any container, but there has to be one. */
  @Test
  void noContainerAtAll() {
    Trips trips =
        two()
            .item("p", s -> s.mass(1).goesInto("food"))
            .item("box", s -> s.mass(1).contains("food", 9));
    assertEquals(
        "a carries things that go into a container of kind “food” on day 1, and holds none.",
        breaks(FindingCode.NO_CONTAINER, trips, Splits.of("a", "p").and("b", "box")).message());
  }

  @Test
  void aSharedContainerOfAnotherKindDoesNotDo() {
    Trips trips =
        two()
            .item("box", s -> s.mass(1).contains("food", 9))
            .item("flask", s -> s.mass(1).contains("fuel", 9))
            .item("p", s -> s.mass(1).volume(3).goesInto("fuel"));
    breaks(FindingCode.NO_CONTAINER, trips, Splits.of("a", "box", "p").and("b", "flask"));
  }

  /** A container given out twice is one finding; its contents fit. */
  @Test
  void whatIsGivenOutTwiceCountsTwice() {
    Trips trips =
        two()
            .item("box", s -> s.mass(1).contains("food", 6))
            .item("u", s -> s.count(2).mass(1).volume(6).goesInto("food"));
    breaks(FindingCode.CARRIED_TWICE, trips, Splits.of("a", "box*2", "u*2"));
  }

  @Test
  void howManyThereAre() {
    Trips trips = Trips.targets(9000, 9000, 9000).pieces(10).item("u", s -> s.count(3).mass(1));
    Finding one =
        breaks(FindingCode.CARRIED_TWICE, trips, Splits.of("a", "p1", "u*3").and("c", "p1"));
    assertEquals(List.of("a", "c"), one.hikers());
    assertEquals("“p1”: 2 are given out, but there is 1.", one.message());
    Finding many =
        breaks(FindingCode.CARRIED_TWICE, trips, Splits.of("a", "p1", "u*2").and("c", "u*2"));
    assertEquals("“u”: 4 are given out, but there are 3.", many.message());
  }

  @Test
  void whatSomebodyWhoIsToOpenHas() {
    Trips trips =
        Trips.days(2)
            .hiker("a", h -> h.target(9000))
            .hiker("b", h -> h.target(9000).leavesAfter(1))
            .item("u", s -> s.count(2).mass(1).perDay(List.of(0, 2), 0));
    Verdict few =
        Judged.verdict(
            trips,
            Splits.of("a", "u").and("b", "u").handed(1, "b", "a", "u").opened(2, "u", "a", 3));
    assertEquals(true, messages(few).contains("“u”: a is to open 3 on day 2 but has 2."), "" + few);
    Verdict gone =
        Judged.verdict(
            trips,
            Splits.of("a", "u").and("b", "u").handed(1, "b", "a", "u").opened(2, "u", "b", 2));
    assertEquals(
        true,
        messages(gone).contains("“u”: b is to open 2 on day 2 but has left by then."),
        "" + gone);
  }

  @Test
  void whichPartyLacksWhat() {
    Trips trips =
        Trips.days(1)
            .hiker("a", h -> h.target(9000).party("front"))
            .hiker("b", h -> h.target(9000))
            .item("lamp", s -> s.mass(1).covers("light"))
            .partyHas("light", 1);
    assertEquals(
        "Party “front” has 0 of 1 wanted for “light” on day 1.",
        breaks(FindingCode.PARTY_LACKS, trips, Splits.of("b", "lamp")).message());
    assertEquals(
        "Those without a party have 0 of 1 wanted for “light” on day 1.",
        breaks(FindingCode.PARTY_LACKS, trips, Splits.of("a", "lamp")).message());
  }

  /** Own kit of 1.2 kg and 0.5 kg more against a cap of 1 kg; the most of both mornings is told. */
  @Test
  void howFarOverTheCap() {
    Trips trips =
        Trips.days(2)
            .hiker("a", h -> h.target(9000).capLoad(1000).kit("kit", 1200))
            .hiker("b", h -> h.target(9000))
            .item("p", s -> s.mass(500).evenly(0));
    assertEquals(
        List.of(
            "a is up to 700 g over the cap on days 1 to 2.",
            "a’s own kit alone is up to 200 g over the cap."),
        messages(Judged.verdict(trips, Splits.of("a", "p"))));
  }

  /** Two meals a day for three people on the second day are six. */
  @Test
  void forThePeopleOfTheFirstDayItIsThere() {
    Trips trips =
        Trips.days(2)
            .hiker("a", h -> h.target(9000))
            .hiker("b", h -> h.target(9000))
            .hiker("c", h -> h.target(9000))
            .item("u", s -> s.perPerson(2).mass(1).onDays(2));
    keeps(trips, Splits.of("a", "u*6"));
    breaks(FindingCode.NOT_CARRIED, trips, Splits.of("a", "u*5"));
  }

  /** What is there on every day is base weight, what comes or goes is not. */
  @Test
  void onEveryDayIsBaseWeight() {
    Trips trips =
        Trips.days(2)
            .hiker("a", h -> h.target(9000))
            .item("always", s -> s.mass(100).onDays(1, 2))
            .item("once", s -> s.mass(10).onDays(2));
    List<Morning> mornings =
        Judged.verdict(trips, Splits.of("a", "always", "once")).hikers().get(0).mornings();
    assertEquals(
        List.of(100_000L, 100_000L), mornings.stream().map(Morning::baseMilligrams).toList());
    assertEquals(
        List.of(0L, 10_000L), mornings.stream().map(Morning::consumablesMilligrams).toList());
  }

  /** Packaging of a leaver's meal weighs on every morning until they leave. */
  @Test
  void packagingStaysUntilItsCarrierLeaves() {
    Trips trips =
        Trips.days(4)
            .hiker("a", h -> h.target(9000).leavesAfter(3))
            .hiker("b", h -> h.target(9000))
            .item("u", s -> s.count(1).mass(100).perDay(List.of(1, 0, 0, 0), 20));
    Verdict verdict = Judged.verdict(trips, Splits.of("a", "u").opened(1, "u", "a", 1));
    assertEquals(
        List.of(100_000L, 20_000L, 20_000L),
        verdict.hikers().get(0).mornings().stream().map(Morning::loadMilligrams).toList());
  }

  @Test
  void whoHasNoCapIsNeverOverIt() {
    Trips trips = two().hiker("c", h -> h.target(9000).pack(1, Optional.empty(), Optional.empty()));
    assertEquals(List.of(), Judged.verdict(trips.pieces(20_000), Splits.of("c", "p1")).findings());
  }
}
