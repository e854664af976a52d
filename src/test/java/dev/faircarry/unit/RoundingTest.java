package dev.faircarry.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every rounding, around its edges. */
class RoundingTest {

  @ParameterizedTest
  @CsvSource({"0.5, 1", "0.4999, 0", "1.5, 2", "2.5, 3", "7, 7"})
  void halfUp(String quantity, long whole) {
    assertEquals(whole, Rounding.halfUpToWhole(new BigDecimal(quantity)));
  }

  @ParameterizedTest
  @CsvSource({"7, 2, 3, 4", "8, 2, 4, 4", "0, 5, 0, 0", "-7, 2, -4, -3", "1, 1000, 0, 1"})
  void downAndUp(long numerator, long denominator, long down, long up) {
    assertEquals(down, Rounding.down(numerator, denominator));
    assertEquals(up, Rounding.up(numerator, denominator));
  }
}
