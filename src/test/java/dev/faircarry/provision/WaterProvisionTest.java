package dev.faircarry.provision;

import static dev.faircarry.provision.PlanSamples.route;
import static dev.faircarry.provision.PlanSamples.temperature;
import static dev.faircarry.provision.PlanSamples.trip;
import static dev.faircarry.provision.PlanSamples.volume;
import static dev.faircarry.provision.PlanSamples.water;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.plan.Water;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Water between sources worked out by hand. */
class WaterProvisionTest {

  private static Water drinking(
      Optional<String> perHour, Optional<String> celsius, Water.Stretch... stretches) {
    return new Water(
        perHour.map(PlanSamples::volume),
        celsius.map(PlanSamples::temperature),
        Optional.of(volume("3 L")),
        Optional.of(volume("1.5 L")),
        OptionalInt.of(2),
        Optional.empty(),
        List.of(stretches));
  }

  /** 150 min at 0.5 L/h are 1.25 L, one unit; the longer of a day's two stretches counts. */
  @Test
  void theLongestStretchOfADayCounts() {
    Provision provision =
        Provisions.of(
            trip(
                3,
                water(
                    drinking(
                        Optional.of("0.5 L"),
                        Optional.empty(),
                        new Water.Stretch(2, OptionalInt.of(150), false),
                        new Water.Stretch(2, OptionalInt.of(90), false))),
                3,
                3));
    SharedItem item = provision.items().get(0).item();
    assertEquals("plan-water-2", item.id());
    assertEquals(List.of(2), item.onDays());
    Form.Counted counted = (Form.Counted) item.form();
    assertEquals(new Form.Quantity.PerPerson(1), counted.quantity());
    assertEquals(1_250_000, counted.unitMass().milligrams());
    assertEquals(1, provision.items().size());
  }

  /**
   * 5 h at 0.5 L/h and 3 L for the night are 5.5 L: four units of at most 1.5 L, 1,375 mL each. Two
   * people have two bottles each, so four are missing.
   */
  @Test
  void aDryNightAndMissingBottles() {
    Provision provision =
        Provisions.of(
            trip(
                3,
                water(
                    drinking(
                        Optional.of("0.5 L"),
                        Optional.empty(),
                        new Water.Stretch(1, OptionalInt.of(300), true))),
                3,
                3));
    Form.Counted unit = (Form.Counted) provision.items().get(0).item().form();
    assertEquals(new Form.Quantity.PerPerson(4), unit.quantity());
    assertEquals(1_375_000, unit.unitMass().milligrams());
    Form.Counted bottles = (Form.Counted) provision.items().get(1).item().form();
    assertEquals(new Form.Quantity.Fixed(4), bottles.quantity());
    assertEquals(Note.Code.BOTTLES_MISSING, provision.notes().get(0).code());
  }

  /**
   * Without minutes the day's route decides: 10 km and 600 m of climb are 3 h by Naismith, 1.5 L.
   */
  @Test
  void walkingTimeFromTheRoute() {
    Provision provision =
        Provisions.of(
            trip(
                1,
                water(
                    drinking(
                        Optional.of("0.5 L"),
                        Optional.empty(),
                        new Water.Stretch(1, OptionalInt.empty(), false)),
                    route(1, "10 km", "600 m", "0 m", Optional.empty())),
                1));
    Form.Counted unit = (Form.Counted) provision.items().get(0).item().form();
    assertEquals(1_500_000, unit.unitMass().milligrams());
  }

  @Test
  void noTimeNoRouteIsSaid() {
    Provision provision =
        Provisions.of(
            trip(
                1,
                water(
                    drinking(
                        Optional.of("0.5 L"),
                        Optional.empty(),
                        new Water.Stretch(1, OptionalInt.empty(), false))),
                1));
    assertEquals(List.of(), provision.items());
    assertEquals(Note.Code.WALKING_TIME_ASSUMED, provision.notes().get(0).code());
  }

  /** The habit by temperature: common practice. */
  @ParameterizedTest
  @CsvSource({"5 °C, 400000", "59 F, 500000", "25 °C, 500000", "28 C, 750000", "35 °C, 1000000"})
  void habitByTemperature(String air, long milligramsForAnHour) {
    temperature(air);
    Provision provision =
        Provisions.of(
            trip(
                1,
                water(
                    drinking(
                        Optional.empty(),
                        Optional.of(air),
                        new Water.Stretch(1, OptionalInt.of(60), false))),
                1));
    Form.Counted unit = (Form.Counted) provision.items().get(0).item().form();
    assertEquals(milligramsForAnHour, unit.unitMass().milligrams());
  }
}
