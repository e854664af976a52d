package dev.faircarry.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Policy;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.Use;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What a good document means, field by field. */
class TripReaderTest {
  private static final Trip TRIP = Documents.trip(Documents.resource("/trips/each-kind-once.json"));

  @Test
  void tripAndPolicy() {
    assertEquals("High tarns, three nights", TRIP.name());
    assertEquals(4, TRIP.days());
    assertEquals(200_000, TRIP.policy().targetFraction().millionths());
    assertEquals(300_000, TRIP.policy().capFraction().millionths());
    assertEquals(Policy.Basis.LOAD, TRIP.policy().basis());
    assertEquals(5, TRIP.policy().grainThousandths());
    assertEquals(3, TRIP.hikers().size());
    assertEquals(12, TRIP.shared().size());
    assertEquals(6, TRIP.rules().size());
  }

  @Test
  void hikerWithEverything() {
    Hiker asha = TRIP.hikers().get(0);
    assertEquals("58 kg", asha.bodyMass().orElseThrow().entered());
    assertEquals(Optional.of("front"), asha.party());
    assertEquals(180_000, asha.targetFraction().orElseThrow().millionths());
    assertEquals(13_000_000, asha.capLoad().orElseThrow().milligrams());
    assertEquals(OptionalInt.of(8), asha.maxPieces());
    // NIST SP 811: 2 lb 11 oz = 43 oz x 28 349.523 125 mg = 1 219 029.49 mg
    assertEquals(1_219_029, asha.pack().orElseThrow().mass().milligrams());
    assertEquals(45_000, asha.pack().orElseThrow().volume().orElseThrow().milliliters());
    assertEquals("12 kg", asha.pack().orElseThrow().loadRating().orElseThrow().entered());
  }

  @Test
  void kitItems() {
    List<KitItem> kit = TRIP.hikers().get(0).kit();
    assertEquals(MassFrom.SCALE, kit.get(0).massFrom());
    assertEquals(Stow.BOTTOM, kit.get(0).stow());
    assertEquals(18_000, kit.get(0).cost().orElseThrow().hundredths());
    assertEquals(true, kit.get(1).worn());
    assertEquals(List.of("light"), kit.get(2).covers());
    assertEquals(true, kit.get(3).luxury());
    assertEquals(40_000, kit.get(4).use().orElseThrow().leaves().milligrams());
    assertEquals(Stow.INSIDE, kit.get(4).stow());
    assertEquals(MassFrom.LABEL, kit.get(4).massFrom());
  }

  @Test
  void hikerWhoLeavesEarlyAndTellsNoBodyMass() {
    Hiker tomas = TRIP.hikers().get(1);
    assertEquals(Optional.empty(), tomas.bodyMass());
    assertEquals(15_000_000, tomas.targetLoad().orElseThrow().milligrams());
    assertEquals(OptionalInt.of(2), tomas.leavesAfterDay());
    assertEquals(List.of(), tomas.kit());
  }

  @Test
  void sharedForms() {
    SharedItem shelter = TRIP.shared().get(1);
    assertEquals(OptionalInt.of(2), shelter.sleeps());
    Form.Parts parts = (Form.Parts) shelter.form();
    assertEquals("fly", parts.parts().get(0).name());
    assertEquals(Stow.OUTSIDE, parts.parts().get(0).stow());

    SharedItem canister = TRIP.shared().get(2);
    assertEquals(Optional.of("asha"), canister.owner());
    assertEquals(
        11_000, ((Form.Whole) canister.form()).contains().orElseThrow().volume().milliliters());

    SharedItem dinner = TRIP.shared().get(3);
    Form.Counted pouches = (Form.Counted) dinner.form();
    assertEquals(new Form.Quantity.Fixed(16), pouches.quantity());
    assertEquals(Optional.of("food"), dinner.goesInto());
    Use.UnitsPerDay use = (Use.UnitsPerDay) pouches.use().orElseThrow();
    assertEquals(new Use.PerDay.Same(4), use.perDay());
    assertEquals(12_000, use.leaves().milligrams());

    Form.Counted muesli = (Form.Counted) TRIP.shared().get(10).form();
    assertEquals(new Form.Quantity.PerPerson(1), muesli.quantity());
    assertEquals(
        new Use.PerDay.FollowsParty(), ((Use.UnitsPerDay) muesli.use().orElseThrow()).perDay());

    assertEquals(List.of(2), TRIP.shared().get(11).onDays());
  }

  @Test
  void rules() {
    PieceRef filter = PieceRef.item("filter");
    assertEquals(
        List.of(
            new Rule.Pinned("r1", List.of(filter), "asha"),
            new Rule.Barred("r2", List.of(PieceRef.item("gas")), List.of("tomas")),
            new Rule.Together("r3", List.of(PieceRef.item("stove"), PieceRef.item("pot"))),
            new Rule.Apart(
                "r4", List.of(PieceRef.item("first-aid-a"), PieceRef.item("first-aid-b"))),
            new Rule.PartyHas("r5", "water-treatment", List.of("front", "back"), 1),
            new Rule.Only(
                "r6",
                List.of(PieceRef.part("shelter", "fly"), PieceRef.part("shelter", "pegs")),
                List.of("asha", "ruth"))),
        TRIP.rules());
  }

  @Test
  void absentFieldsHaveTheirDefaults() {
    Trip trip =
        Documents.trip(
            """
            {"format": "faircarry-trip/1", "name": "Short", "days": 1,
             "hikers": [{"id": "a", "targetLoad": "9 kg"}]}
            """);
    assertEquals(Policy.DEFAULT, trip.policy());
    assertEquals("a", trip.hikers().get(0).name());
    assertEquals(List.of(), trip.shared());
    assertEquals(List.of(), trip.rules());
  }

  @Test
  void missingIdsAreGivenAndSkipThoseTaken() {
    Trip trip =
        Documents.trip(
            """
            {"format": "faircarry-trip/1", "name": "Short", "days": 1,
             "hikers": [
               {"name": "First", "targetLoad": "9 kg",
                "kit": [{"name": "Mug", "mass": "90 g"}, {"name": "Spoon", "mass": "9 g"}]},
               {"id": "h1", "name": "Second", "targetLoad": "9 kg"},
               {"name": "Third", "targetLoad": "9 kg"}],
             "shared": [{"name": "Pot", "parts": [{"name": "Lid", "mass": "60 g"}]}],
             "rules": [{"kind": "together", "pieces": ["s1"]}]}
            """);
    assertEquals(List.of("h2", "h1", "h3"), trip.hikers().stream().map(Hiker::id).toList());
    assertEquals(
        List.of("k1", "k2"), trip.hikers().get(0).kit().stream().map(KitItem::id).toList());
    assertEquals("s1", trip.shared().get(0).id());
    assertEquals("p1", ((Form.Parts) trip.shared().get(0).form()).parts().get(0).id());
    assertEquals("r1", trip.rules().get(0).id());
  }
}
