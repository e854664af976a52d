package dev.faircarry.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Masses and volumes as people write them. */
class QuantityTest {

  private static long milligrams(String text) {
    return value(Mass.parse(text)).milligrams();
  }

  private static long milliliters(String text) {
    return value(Volume.parse(text)).milliliters();
  }

  private static <T> T value(Parse<T> parse) {
    return parse instanceof Parse.Read<T> read ? read.value() : fail(parse.toString());
  }

  private static Parse.Fault fault(Parse<?> parse) {
    return parse instanceof Parse.Unreadable<?> bad ? bad.fault() : fail(parse.toString());
  }

  /** 1 lb = 453.592 37 g and 1 oz = 1/16 lb, exact: NIST SP 811 (2008), appendix B. */
  @ParameterizedTest
  @CsvSource({
    "1 mg, 1",
    "1 g, 1000",
    "1 kg, 1000000",
    "1000 oz, 28349523",
    "1000 lb, 453592370",
    "2 lbs, 907185",
    "16 oz, 453592",
    "1 lb 12 oz, 793787", // 28 oz = 793 786.647 5 mg
    "1lb12oz, 793787",
    "2 lb 2.5 oz, 978059", // 34.5 oz = 978 058.547 8 mg
    "1 kg 250 g, 1250000",
    "31 oz, 878835", // 878 835.216 9 mg
    "3.5 oz, 99223", // 99 223.330 9 mg
    "152 lb, 68946040", // 68 946 040.24 mg
    "0 g, 0",
    ".5 kg, 500000",
    "5. g, 5000",
    "007 g, 7000",
    "1.20 KG, 1200000",
    "'  12   oz ', 340194", // 340 194.277 5 mg
  })
  void masses(String text, long milligrams) {
    assertEquals(milligrams, milligrams(text));
  }

  /** 1 in = 2.54 cm, 1 gal = 231 in³, exact: NIST SP 811 (2008), appendix B. */
  @ParameterizedTest
  @CsvSource({
    "1 mL, 1",
    "1 L, 1000",
    "45 l, 45000",
    "32 fl oz, 946", // one quart, 946.352 946 mL
    "10000 fl oz, 295735", // 295 735.295 625
    "1 qt, 946",
    "1 gal, 3785",
    "1000 gal, 3785412", // 3 785 411.784
    "3000 cu in, 49161", // 49 161.192
    "3000 in³, 49161",
    "3000in³, 49161",
    "1 gal 1 qt, 4732", // 4 731.764 73
    "1 L 500 mL, 1500",
    "1 fl  oz, 30",
  })
  void volumes(String text, long milliliters) {
    assertEquals(milliliters, milliliters(text));
  }

  /** 16 CFR 500.19, table of factors "given to six significant digits". */
  @ParameterizedTest
  @CsvSource({"oz, 28.3495", "lb, 453.592"})
  void federalTableOfMassFactors(String unit, String grams) {
    assertSixDigits(grams, BigDecimal.valueOf(milligrams("1000 " + unit), 6));
  }

  /** The same table; so many units that a rounded millilitre is below the sixth digit. */
  @ParameterizedTest
  @CsvSource({
    "5, fl oz, 29.5735",
    "4, qt, 946.353",
    "3, gal, 3785.41",
    "5, cu in, 16.3871",
  })
  void federalTableOfVolumeFactors(int zeros, String unit, String milliliters) {
    long many = milliliters("1" + "0".repeat(zeros) + " " + unit);
    assertSixDigits(milliliters, BigDecimal.valueOf(many, zeros));
  }

  private static void assertSixDigits(String expected, BigDecimal actual) {
    assertEquals(new BigDecimal(expected), actual.round(new MathContext(6, RoundingMode.HALF_UP)));
  }

  @Test
  void halvesGoUpOnce() {
    assertEquals(1, milligrams("0.0005 g"));
    assertEquals(0, milligrams("0.000499999999999999999999 g"));
    assertEquals(2, milligrams("1.5 mg"));
    assertEquals(1, milligrams("0.5 mg"));
    assertEquals(1, milliliters("0.5 mL"));
    // 453 592.37 mg + 170 097.138 75 mg = 623 689.508 75 mg; rounded apart it would be one less.
    assertEquals(623_690, milligrams("1 lb 6 oz"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"58\u00a0kg", "58\u202fkg", "58\u2007kg", "58\tkg"})
  void spacesOfTypesettersAreSpaces(String text) {
    assertEquals(58_000_000, milligrams(text));
    assertEquals(text, value(Mass.parse(text)).entered());
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          '', EMPTY
          '   ', EMPTY
          '\u00a0', EMPTY
          5, NO_UNIT
          1 kg 2, NO_UNIT
          1 000 g, NO_UNIT
          2 stones, UNKNOWN_UNIT
          5 pounds, UNKNOWN_UNIT
          5 L, UNKNOWN_UNIT
          1 Mg, UNKNOWN_UNIT
          5 kg!, UNKNOWN_UNIT
          12 oz., UNKNOWN_UNIT
          5 k g, UNKNOWN_UNIT
          -5 kg, NEGATIVE
          - 5 kg, NEGATIVE
          −5 kg, NEGATIVE
          5 kg -1 g, NEGATIVE
          1..2 kg, NOT_A_NUMBER
          '1,05 kg', NOT_A_NUMBER
          '1,050 kg', NOT_A_NUMBER
          1e5 g, NOT_A_NUMBER
          1E-5 g, NOT_A_NUMBER
          1e g, UNKNOWN_UNIT
          +5 kg, NOT_A_NUMBER
          ∞, NOT_A_NUMBER
          ∞ kg, NOT_A_NUMBER
          NaN kg, NOT_A_NUMBER
          ٥ kg, NOT_A_NUMBER
          ５ kg, NOT_A_NUMBER
          ½ kg, NOT_A_NUMBER
          kg, NOT_A_NUMBER
          . kg, NOT_A_NUMBER
          1.2.3 kg, NOT_A_NUMBER
          12 oz 1 lb, OUT_OF_ORDER
          1 oz 1 oz, OUT_OF_ORDER
          1 lb 2 lbs, OUT_OF_ORDER
          1.5 lb 3 oz, OUT_OF_ORDER
          1000.000001 kg, TOO_LARGE
          99999999999999999999999999 kg, TOO_LARGE
          """)
  void faultsOfMasses(String text, Parse.Fault fault) {
    assertEquals(fault, fault(Mass.parse(text)));
  }

  @Test
  void limitsOfLengthAndSize() {
    assertEquals(Mass.MAX_MILLIGRAMS, milligrams("1000 kg"));
    assertEquals(Volume.MAX_MILLILITERS, milliliters("10000 L"));
    assertEquals(Parse.Fault.TOO_LARGE, fault(Volume.parse("10000.001 L")));
    assertEquals(1_000, milligrams(" ".repeat(37) + "1 g"));
    assertEquals(Parse.Fault.TOO_LONG, fault(Mass.parse(" ".repeat(38) + "1 g")));
  }

  @ParameterizedTest
  @CsvSource({"5 oz, UNKNOWN_UNIT", "1 ML, UNKNOWN_UNIT", "5 kg, UNKNOWN_UNIT", "1 qt -, NEGATIVE"})
  void faultsOfVolumes(String text, Parse.Fault fault) {
    assertEquals(fault, fault(Volume.parse(text)));
  }

  @Test
  void whatWasEnteredStaysWordForWord() {
    assertEquals(" 1 LB  12oz ", value(Mass.parse(" 1 LB  12oz ")).entered());
    assertEquals("200 Cu In", value(Volume.parse("200 Cu In")).entered());
  }

  @Test
  void statedMassesReadBackEqual() {
    SplittableRandom random = new SplittableRandom(20);
    for (int i = 0; i < 2000; i++) {
      long milligrams = random.nextLong(Mass.MAX_MILLIGRAMS + 1);
      Mass stated = Mass.ofMilligrams(milligrams);
      assertEquals(stated, value(Mass.parse(stated.entered())), "seed 20, round " + i);
    }
  }

  @Test
  void randomTextNeverThrows() {
    SplittableRandom random = new SplittableRandom(21);
    String alphabet = "0123456789.,-−+ eEkKgGlLmMbBozfqtuin³\u00a0٥∞½\ud800\t";
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(12); n > 0; n--) {
        text.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      String entered = text.toString();
      if (Mass.parse(entered) instanceof Parse.Read<Mass> read) {
        assertEquals(entered, read.value().entered(), "seed 21, round " + i);
        assertEquals(true, read.value().milligrams() >= 0, entered);
      }
    }
  }
}
