package dev.faircarry.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How computed masses are written. */
class MassTextTest {

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "1, 0.001",
    "1000, 1",
    "10000, 10",
    "1000000, 1000",
    "12345600, 12345.6",
    "-1500, -1.5"
  })
  void plainGrams(long milligrams, String text) {
    assertEquals(text, MassText.plainGrams(milligrams));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0.00 kg",
    "12345000, 12.35 kg", // the half goes up
    "12344999, 12.34 kg",
    "999999, 1.00 kg",
    "5000, 0.01 kg",
    "4999, 0.00 kg"
  })
  void kilograms(long milligrams, String text) {
    assertEquals(text, MassText.kilograms(milligrams));
  }

  /** 1 lb = 453 592.37 mg, 1 oz = 28 349.523 125 mg: NIST SP 811 (2008), appendix B. */
  @ParameterizedTest
  @CsvSource({
    "0, 0 lb 0.0 oz",
    "28350, 0 lb 1.0 oz",
    "453592, 1 lb 0.0 oz",
    "793787, 1 lb 12.0 oz",
    "978059, 2 lb 2.5 oz",
    "452300, 1 lb 0.0 oz", // 15.954 oz: sixteen ounces are a pound, not 16.0 oz
    "1417, 0 lb 0.0 oz", // just under half of a tenth, 1 417.476 mg
    "1418, 0 lb 0.1 oz",
    "-453592, -1 lb 0.0 oz"
  })
  void poundsAndOunces(long milligrams, String text) {
    assertEquals(text, MassText.poundsAndOunces(milligrams));
  }
}
