package dev.faircarry.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Factors of NIST SP 811 (2008), appendix B. */
class LengthAndTemperatureTest {

  @ParameterizedTest
  @CsvSource({
    "1 m, 1000",
    "12.5 km, 12500000",
    "1 ft, 305",
    "1000 ft, 304800",
    "1 mi, 1609344",
    "3 mi 500 ft, 4980432",
    "0 m, 0"
  })
  void lengths(String text, long millimeters) {
    assertEquals(new Parse.Read<>(new Length(text, millimeters)), Length.parse(text));
  }

  @ParameterizedTest
  @CsvSource({
    "5, NO_UNIT",
    "-5 m, NEGATIVE",
    "1 league, UNKNOWN_UNIT",
    "200000 km, TOO_LARGE",
    "m, NOT_A_NUMBER"
  })
  void notLengths(String text, Parse.Fault fault) {
    assertEquals(new Parse.Unreadable<>(fault), Length.parse(text));
  }

  @Test
  void heightsMayLieBelowTheSea() {
    assertEquals(new Parse.Read<>(new Length("-30 m", -30_000)), Length.parseHeight("-30 m"));
    assertEquals(new Parse.Read<>(new Length("30 m", 30_000)), Length.parseHeight("30 m"));
    assertEquals(new Parse.Unreadable<>(Parse.Fault.NEGATIVE), Length.parseHeight("--30 m"));
  }

  @ParameterizedTest
  @CsvSource({
    "10 °C, 10000",
    "-5 C, -5000",
    "-0.5 °C, -500",
    "32 °F, 0",
    "50 F, 10000",
    "212 °F, 100000",
    "14F, -10000",
    "1 F, -17222"
  })
  void temperatures(String text, long millicelsius) {
    assertEquals(new Parse.Read<>(new Temperature(text, millicelsius)), Temperature.parse(text));
  }

  @ParameterizedTest
  @CsvSource({
    "10, NO_UNIT",
    "warm, NOT_A_NUMBER",
    "10 K, NOT_A_NUMBER",
    "-300 C, NEGATIVE",
    "'', EMPTY",
    "10.00001 C, NOT_A_NUMBER"
  })
  void notTemperatures(String text, Parse.Fault fault) {
    assertEquals(new Parse.Unreadable<>(fault), Temperature.parse(text));
  }
}
