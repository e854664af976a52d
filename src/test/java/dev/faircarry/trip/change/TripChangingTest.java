package dev.faircarry.trip.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.TripIssues;
import dev.faircarry.fixture.Trips;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.Use;
import dev.faircarry.trip.change.ChangeFault.Kind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class TripChangingTest {
  private final Trip trip =
      Trips.days(3)
          .hiker("asha", h -> h.body(60_000).party("front").worn("lamp", 50, "light"))
          .hiker("bela", h -> h.body(70_000).party("back"))
          .hiker("cleo", h -> h.target(9_000).party("back").leavesAfter(3))
          .item("stove", s -> s.mass(100).owner("asha"))
          .item("tent", s -> s.part("fly", 700).part("pegs", 60))
          .item("soup", s -> s.mass(90).count(6).perDay(List.of(1, 2, 3), 5))
          .item("oats", s -> s.mass(80).perPerson(1).usedByParty(0))
          .pinned("asha", "stove")
          .only(List.of("asha", "bela"), "tent")
          .apart("tent/fly", "tent/pegs")
          .partyHas("light", 1, "front")
          .together("stove", "soup")
          .trip();

  private Changed.Made made(Change... changes) {
    Changed changed = TripChanging.apply(trip, List.of(changes));
    assertTrue(changed instanceof Changed.Made, changed::toString);
    Changed.Made made = (Changed.Made) changed;
    assertEquals(List.of(), TripIssues.of(made.trip()));
    return made;
  }

  private List<Kind> refused(Change... changes) {
    Changed changed = TripChanging.apply(trip, List.of(changes));
    assertTrue(changed instanceof Changed.Refused, changed::toString);
    return ((Changed.Refused) changed).faults().stream().map(ChangeFault::kind).toList();
  }

  private static List<String> ruleIds(Trip trip) {
    return trip.rules().stream().map(Rule::id).toList();
  }

  private static SharedItem item(Trip trip, String id) {
    return trip.shared().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void rulesOfADropOutAreDroppedOrNarrowedAndThatIsTold() {
    Changed.Made made = made(new Change.DropsOut("asha"));
    assertEquals(List.of("r2", "r3", "r5"), ruleIds(made.trip()));
    assertEquals(
        List.of("bela"), ((Rule.Only) made.trip().rules().get(0)).hikers(), "r2 is narrowed");
    assertEquals(Optional.empty(), item(made.trip(), "stove").owner());
    assertEquals(
        List.of(
            ChangeNote.Kind.NEED_GOES_WITH_HIKER,
            ChangeNote.Kind.OWNER_GONE,
            ChangeNote.Kind.RULE_DROPPED,
            ChangeNote.Kind.RULE_NARROWED,
            ChangeNote.Kind.RULE_DROPPED),
        made.notes().stream().map(ChangeNote::kind).toList());
  }

  @Test
  void theOnlyOtherPartyStaysNamedWhileSomebodyIsInIt() {
    Changed.Made made = made(new Change.DropsOut("bela"));
    assertEquals(List.of("r1", "r2", "r3", "r4", "r5"), ruleIds(made.trip()));
  }

  @Test
  void aLostPartLeavesTheOthers() {
    Changed.Made made =
        made(new Change.ItemGone(PieceRef.part("tent", "pegs"), OptionalInt.empty()));
    assertEquals(1, ((Form.Parts) item(made.trip(), "tent").form()).parts().size());
    // Nothing is left to keep apart.
    assertEquals(List.of("r1", "r2", "r4", "r5"), ruleIds(made.trip()));
  }

  @Test
  void lostUnitsLeaveTheOthers() {
    Changed.Made made = made(new Change.ItemGone(PieceRef.item("soup"), OptionalInt.of(2)));
    Form.Counted soup = (Form.Counted) item(made.trip(), "soup").form();
    assertEquals(new Form.Quantity.Fixed(4), soup.quantity());
    assertEquals(5, made.trip().rules().size());
  }

  @Test
  void aReplacementTakesThePlaceOfTheOldInRules() {
    SharedItem burner = Trips.days(1).item("burner", s -> s.mass(210)).trip().shared().get(0);
    Changed.Made made = made(new Change.ItemReplaced("stove", burner));
    assertEquals(
        List.of(PieceRef.item("burner")), ((Rule.Pinned) made.trip().rules().get(0)).pieces());
    assertEquals(
        List.of(PieceRef.item("burner"), PieceRef.item("soup")),
        ((Rule.Together) made.trip().rules().get(4)).pieces());
  }

  @Test
  void addedDaysUseWhatIsListedAsOnTheLastDay() {
    Changed.Made made = made(new Change.DaysAdded(2));
    assertEquals(5, made.trip().days());
    Form.Counted soup = (Form.Counted) item(made.trip(), "soup").form();
    assertEquals(
        new Use.PerDay.Listed(List.of(1, 2, 3, 3, 3)),
        ((Use.UnitsPerDay) soup.use().orElseThrow()).perDay());
    assertEquals(OptionalInt.empty(), made.trip().hikers().get(2).leavesAfterDay());
  }

  @Test
  void aMassFromAScaleKeepsTheLabelBesideIt() {
    Changed.Made made = made(new Change.KitWeighs("asha", "lamp", Trips.grams(61), MassFrom.SCALE));
    assertEquals(61_000, made.trip().hikers().get(0).kit().get(0).mass().milligrams());
    assertEquals(
        Optional.of(Trips.grams(50)), made.trip().hikers().get(0).kit().get(0).labelMass());
  }

  @Test
  void whatIsNotSaidOfAHikerStays() {
    Changed.Made made =
        made(
            new Change.CanCarry(
                "asha",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(Trips.grams(7_000)),
                OptionalInt.empty()));
    Hiker asha = made.trip().hikers().get(0);
    assertEquals(Optional.of(Trips.grams(60_000)), asha.bodyMass());
    assertEquals(Optional.of(Trips.grams(7_000)), asha.capLoad());
  }

  @Test
  void severalFaultsAreToldAtOnceAndNothingIsChanged() {
    assertEquals(
        List.of(
            Kind.UNKNOWN_HIKER,
            Kind.UNKNOWN_PIECE,
            Kind.NOT_COUNTED,
            Kind.TOO_MANY_UNITS,
            Kind.NOT_COUNTED,
            Kind.NAME_A_PART,
            Kind.UNKNOWN_RULE,
            Kind.NO_SUCH_DAY,
            Kind.DUPLICATE_ID,
            Kind.OUT_OF_RANGE,
            Kind.UNKNOWN_THING),
        refused(
            new Change.DropsOut("dora"),
            new Change.ItemGone(PieceRef.item("kettle"), OptionalInt.empty()),
            new Change.ItemGone(PieceRef.item("stove"), OptionalInt.of(1)),
            new Change.ItemGone(PieceRef.item("soup"), OptionalInt.of(7)),
            new Change.ItemGone(PieceRef.item("oats"), OptionalInt.of(1)),
            new Change.ItemWeighs(PieceRef.item("tent"), Trips.grams(1), MassFrom.SCALE),
            new Change.RuleRemoved("r9"),
            new Change.LeavesAfter("asha", 4),
            new Change.Joins(trip.hikers().get(0)),
            new Change.DaysAdded(28),
            new Change.KitGone("asha", "hat")));
  }

  @Test
  void noChangeIsTheSameTrip() {
    assertEquals(trip, made().trip());
  }
}
