package dev.faircarry.weigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.fixture.Trips;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Changed;
import dev.faircarry.trip.change.TripChanging;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Parse;
import java.util.List;
import org.junit.jupiter.api.Test;

/** a: pack 816 g, quilt 600 g, stove 95 g, boots worn 1,200 g: 1,511 g. b: pack 2,000 g. */
class ReconciliationTest {
  private final Trip trip =
      Trips.days(1)
          .hiker("a", h -> h.target(9_000).pack(816).kit("quilt", 600).worn("boots", 1200))
          .hiker("b", h -> h.target(9_000).pack(2000))
          .item("stove", s -> s.mass(95))
          .trip();
  private final Split split =
      new Split(List.of(new Carry("a", PieceRef.item("stove"), 1)), List.of(), List.of());

  private static ScaleReading reading(Weighed weighed, String mass) {
    Mass read = ((Parse.Read<Mass>) Mass.parse(mass)).value();
    return new ScaleReading(weighed, read, "07:40", "hanging scale", false);
  }

  private List<Reconciled> of(ScaleReading... readings) {
    return Reconciliation.of(trip, split, List.of(readings), Tolerance.DEFAULT);
  }

  private Reconciled pack(String mass) {
    return of(reading(new Weighed.WholePack("a"), mass)).get(0);
  }

  @Test
  void withinFiftyGramsItAgrees() {
    assertEquals(Reconciled.Result.AGREES, pack("1561 g").result());
    assertEquals(1_511_000, pack("1561 g").expectedMilligrams());
    assertEquals(Reconciled.Result.LABELS_COULD_EXPLAIN, pack("1562 g").result());
  }

  @Test
  void aPackLabelledOnePoundEightThatWeighsTwoPointThree() {
    // 2.3 lb = 1,043.262 g, 227.262 g above 816 g: 278 thousandths. A quilt would be off by 378.
    Reconciled reconciled = pack("1738262 mg");
    assertEquals(List.of(new Reconciled.Suspect("pack", 816_000, 278)), reconciled.suspects());
    Reconciled single = of(reading(new Weighed.EmptyPack("a"), "2.3 lb")).get(0);
    assertEquals(Reconciled.Result.REPLACES, single.result());
    assertEquals(1_043_262, single.readMilligrams());
  }

  @Test
  void singleReadingsAreUsedForThePack() {
    List<Reconciled> all =
        of(
            reading(new Weighed.WholePack("a"), "1738 g"),
            reading(new Weighed.EmptyPack("a"), "2.3 lb"));
    assertEquals(Reconciled.Result.AGREES, all.get(1).result());
    assertEquals(1_738_262, all.get(1).expectedMilligrams());
  }

  @Test
  void whatNothingExplainsBecomesALineOfTheKit() {
    // 700 g on labels of at most 816 g is more than a label is off.
    Reconciled reconciled = pack("2211 g");
    assertEquals(Reconciled.Result.UNEXPLAINED, reconciled.result());
    Changed changed = TripChanging.apply(trip, reconciled.changes());
    Trip now = ((Changed.Made) changed).trip();
    assertEquals(700_000, now.hikers().get(0).kit().get(2).mass().milligrams());
    assertEquals(
        Reconciled.Result.AGREES,
        Reconciliation.of(
                now,
                split,
                List.of(reading(new Weighed.WholePack("a"), "2211 g")),
                Tolerance.DEFAULT)
            .get(0)
            .result());
  }

  @Test
  void slipsAreQuestionedAndChangeNothing() {
    for (String mass : List.of("3331 g", "24.2 kg", "42.8 kg", "2711 g", "3511 g")) {
      Reconciled reconciled = pack(mass);
      assertEquals(Reconciled.Result.QUESTIONED, reconciled.result(), mass);
      assertEquals(List.of(), reconciled.changes(), mass);
    }
    assertTrue(pack("3331 g").question().orElseThrow().contains("pounds and kilograms"));
    assertTrue(pack("24.2 kg").question().orElseThrow().contains("pounds and ounces"));
    assertTrue(pack("42.8 kg").question().orElseThrow().contains("ounces and grams"));
    assertTrue(pack("2711 g").question().orElseThrow().contains("worn"));
  }

  @Test
  void severalReadingsHaveToAgree() {
    Weighed weighed = new Weighed.WholePack("a");
    assertEquals(
        Reconciled.Result.AGREES,
        of(reading(weighed, "1500 g"), reading(weighed, "1540 g")).get(0).result());
    assertEquals(
        Reconciled.Result.QUESTIONED,
        of(reading(weighed, "1500 g"), reading(weighed, "1600 g")).get(0).result());
  }
}
