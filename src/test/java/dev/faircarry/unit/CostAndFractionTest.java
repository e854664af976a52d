package dev.faircarry.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Money and fractions of body mass. */
class CostAndFractionTest {

  @ParameterizedTest
  @CsvSource({"180.00, 18000", "180, 18000", "0.5, 50", "0, 0", "999999999.99, 99999999999"})
  void costs(String text, long hundredths) {
    assertEquals(new Parse.Read<>(new Cost(text, hundredths)), Cost.parse(text));
  }

  @ParameterizedTest
  @CsvSource({
    "'', EMPTY",
    "-1, NEGATIVE",
    "1.234, NOT_A_NUMBER",
    "'1,50', NOT_A_NUMBER",
    "$5, NOT_A_NUMBER",
    "1e3, NOT_A_NUMBER",
    "1234567890, NOT_A_NUMBER",
    "'                                        1', TOO_LONG"
  })
  void faultsOfCosts(String text, Parse.Fault fault) {
    assertEquals(new Parse.Unreadable<Cost>(fault), Cost.parse(text));
  }

  @ParameterizedTest
  @CsvSource({"0.20, 200000", "0.2, 200000", "1, 1000000", "1e-1, 100000", "0.333333, 333333"})
  void fractions(String number, long millionths) {
    BigDecimal entered = new BigDecimal(number);
    assertEquals(new Parse.Read<>(new Fraction(entered)), Fraction.of(entered));
    assertEquals(millionths, new Fraction(entered).millionths());
  }

  @ParameterizedTest
  @CsvSource({
    "-0.1, NEGATIVE",
    "0.1234567, TOO_FINE",
    "1e-400, TOO_FINE",
    "1e7, TOO_LARGE",
    "1e308, TOO_LARGE",
    "1e2147483647, TOO_LARGE"
  })
  void faultsOfFractions(String number, Parse.Fault fault) {
    assertEquals(
        new Parse.Unreadable<Fraction>(fault), Fraction.of(new BigDecimal(number)), number);
  }

  @Test
  void fractionOfAMassIsExact() {
    // 0.18 x 58 kg = 10.44 kg = 10 440 000 000 000 ng
    assertEquals(
        10_440_000_000_000L, Fraction.of("0.18").ofMassInNanograms(Mass.ofMilligrams(58_000_000L)));
    // 0.333333 x 1 mg = 333 333 ng
    assertEquals(333_333L, Fraction.of("0.333333").ofMassInNanograms(Mass.ofMilligrams(1)));
  }

  @Test
  void constantsInCodeMustBeFractions() {
    assertThrows(IllegalArgumentException.class, () -> Fraction.of("-0.2"));
    assertThrows(IllegalArgumentException.class, () -> Fraction.of("0.1234567"));
  }
}
