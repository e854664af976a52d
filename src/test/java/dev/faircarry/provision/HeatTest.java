package dev.faircarry.provision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.faircarry.Vectors;
import dev.faircarry.Vectors.Vector;
import dev.faircarry.trip.plan.Food;
import dev.faircarry.trip.plan.Fuel;
import dev.faircarry.unit.Mass;
import java.math.BigDecimal;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Boiling, heat, fuel and food energy against outside sources. */
class HeatTest {

  static Stream<Vector> boiling() {
    return Vectors.of("provision", "isa_pressure+if97_tsat");
  }

  @ParameterizedTest
  @MethodSource("boiling")
  void boilingPointAtAHeight(Vector v) {
    double meters = v.in("geopotential_m");
    assertEquals(v.out("Pa"), BoilingPoint.pressurePascal(meters), 0.1);
    assertEquals(v.out("C"), BoilingPoint.celsius(meters), v.tolerance());
  }

  @Test
  void saturationTemperatureOfTheFormulationsOwnCheckValue() {
    Vector v = Vectors.of("provision", "if97_tsat").findFirst().orElseThrow();
    assertEquals(v.out("K"), BoilingPoint.saturationKelvin(v.in("P_MPa")), v.tolerance());
  }

  /** The other two check values of IAPWS R7-97(2012), table 36, from memory. */
  @Test
  void saturationTemperatureAtLowerPressures() {
    assertEquals(372.755919, BoilingPoint.saturationKelvin(0.1), 1e-6);
    assertEquals(453.035632, BoilingPoint.saturationKelvin(1), 1e-6);
  }

  @Test
  void heightsOffTheLowestLayerAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> BoilingPoint.pressurePascal(11_001));
    assertThrows(IllegalArgumentException.class, () -> BoilingPoint.pressurePascal(-2_001));
    assertThrows(IllegalArgumentException.class, () -> BoilingPoint.pressurePascal(Double.NaN));
  }

  @Test
  void heatOfWater() {
    Vector v = Vectors.of("provision", "heat_water").findFirst().orElseThrow();
    assertEquals(
        v.out("kJ"), Heat.heatWater(v.in("litre"), v.in("from_C"), v.in("to_C")), v.tolerance());
  }

  static Stream<Vector> fuel() {
    return Vectors.of("provision", "fuel_to_boil");
  }

  @ParameterizedTest
  @MethodSource("fuel")
  void fuelToBoil(Vector v) {
    Fuel.Kind kind =
        switch (v.in().path("fuel").asText()) {
          case "propane" -> Fuel.Kind.PROPANE;
          case "butane" -> Fuel.Kind.BUTANE;
          case "ethanol_liquid" -> Fuel.Kind.ETHANOL;
          case "methanol_liquid" -> Fuel.Kind.METHANOL;
          default -> throw new IllegalArgumentException(v.id());
        };
    double heatingValue = Defaults.megajoulesPerKilogram(kind).doubleValue();
    assertEquals(v.in("LHV_MJ_per_kg"), heatingValue);
    double heat = Heat.heatWater(v.in("litre"), v.in("from_C"), v.in("to_C"));
    assertEquals(v.out("g"), Heat.fuelGrams(heat, heatingValue, v.in("efficiency")), v.tolerance());
  }

  /** By hand: 1 kg of snow at -10 °C to 90 °C: 20.9 + 333.55 + 376.74 kJ. */
  @Test
  void meltingSnowCostsAsMuchAsBoiling() {
    assertEquals(731.19, Heat.meltSnow(1, -10, 90), 1e-9);
  }

  @Test
  void atwater() {
    Vector v = Vectors.of("provision", "atwater").findFirst().orElseThrow();
    BigDecimal kcal =
        Atwater.kcal(decimal(v.in("carb_g")), decimal(v.in("protein_g")), decimal(v.in("fat_g")));
    assertEquals(v.out("kcal"), kcal.doubleValue(), v.tolerance());
  }

  /** By hand: 60, 15 and 20 g in 100 g give 480 kcal, 4.8 kcal/g. */
  @Test
  void densityOfAMixture() {
    Food.Mix mix = new Food.Mix(grams(60), grams(15), grams(20), grams(100));
    assertEquals(new BigDecimal("4.8000"), Atwater.kcalPerGram(mix));
  }

  @Test
  void densityFromOunces() {
    Vector v = Vectors.of("provision", "energy_density").findFirst().orElseThrow();
    assertEquals(
        v.out("kcal_per_g"),
        Atwater.kcalPerGramFromOunce(decimal(v.in("kcal_per_oz"))).doubleValue(),
        v.tolerance());
  }

  private static Mass grams(long grams) {
    return Mass.ofMilligrams(grams * 1000);
  }

  private static BigDecimal decimal(double number) {
    return BigDecimal.valueOf(number);
  }
}
