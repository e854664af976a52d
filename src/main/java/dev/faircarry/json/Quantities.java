package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.trip.Limits;
import dev.faircarry.unit.Cost;
import dev.faircarry.unit.Fraction;
import dev.faircarry.unit.Length;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Parse;
import dev.faircarry.unit.Temperature;
import dev.faircarry.unit.Volume;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;

/** Reads the fields of an entry that hold masses, volumes, money and fractions. */
final class Quantities {
  static final Mass NO_MASS = Mass.ofMilligrams(0);

  /** Stands in for an unreadable mass: nothing that is left of a thing can be more. */
  static final Mass MASS_STAND_IN = Mass.ofMilligrams(Limits.ITEM_MASS_MILLIGRAMS);

  private static final Mass BODY_STAND_IN = Mass.ofMilligrams(70_000_000L);
  static final Mass LOAD_STAND_IN = Mass.ofMilligrams(10_000_000L);
  private static final Volume VOLUME_STAND_IN = new Volume("0 L", 0);
  static final Length NO_LENGTH = new Length("0 m", 0);
  private static final Temperature FREEZING = new Temperature("0 °C", 0);
  private static final int MAX_DIGITS = 12;
  private static final Cost COST_STAND_IN = new Cost("0", 0);

  private Quantities() {}

  static Optional<Mass> mass(Entry entry, String field) {
    return quantity(entry, field, Mass::parse, MASS_STAND_IN, "a mass such as \"31 oz\"", true);
  }

  static Mass neededMass(Entry entry, String field) {
    return mass(entry, field).orElseGet(() -> entry.missing(field, MASS_STAND_IN));
  }

  /** What is left of a thing: nothing unless stated. */
  static Mass leaves(Entry use) {
    return quantity(use, "leaves", Mass::parse, NO_MASS, "a mass such as \"40 g\"", true)
        .orElse(NO_MASS);
  }

  /** Never shown in an issue. */
  static Optional<Mass> bodyMass(Entry entry, String field) {
    return quantity(entry, field, Mass::parse, BODY_STAND_IN, "a mass such as \"70 kg\"", false);
  }

  /** Never shown in an issue: with the policy's fraction it tells the body mass. */
  static Optional<Mass> targetLoad(Entry entry, String field) {
    return quantity(entry, field, Mass::parse, LOAD_STAND_IN, "a mass such as \"10 kg\"", false);
  }

  static Optional<Volume> volume(Entry entry, String field) {
    return quantity(entry, field, Volume::parse, VOLUME_STAND_IN, "a volume such as \"4 L\"", true);
  }

  static Volume neededVolume(Entry entry, String field) {
    return volume(entry, field).orElseGet(() -> entry.missing(field, VOLUME_STAND_IN));
  }

  static Optional<Cost> cost(Entry entry, String field) {
    return quantity(entry, field, Cost::parse, COST_STAND_IN, "an amount such as \"180.00\"", true);
  }

  static Optional<Length> length(Entry entry, String field) {
    return quantity(entry, field, Length::parse, NO_LENGTH, "a length such as \"12 km\"", true);
  }

  static Optional<Length> height(Entry entry, String field) {
    return quantity(
        entry, field, Length::parseHeight, NO_LENGTH, "a height such as \"1800 m\"", true);
  }

  static Optional<Temperature> temperature(Entry entry, String field) {
    return quantity(
        entry, field, Temperature::parse, FREEZING, "a temperature such as \"10 °C\"", true);
  }

  /** A number that need not be whole; its limits are judged later. */
  static Optional<BigDecimal> decimal(Entry entry, String field) {
    return plainNumber(entry, field, BigDecimal.ONE);
  }

  /** A part of something, a number from 0 to 1 or a little more; its limits are judged later. */
  static Optional<Fraction> share(Entry entry, String field) {
    return plainNumber(entry, field, BigDecimal.ZERO)
        .map(
            number -> {
              if (Fraction.of(number) instanceof Parse.Read<Fraction> read) {
                return read.value();
              }
              notPlain(entry, field, number.toString());
              return Fraction.of("0");
            });
  }

  private static Optional<BigDecimal> plainNumber(Entry entry, String field, BigDecimal standIn) {
    Optional<JsonNode> value = entry.find(field);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    if (!value.get().isNumber()) {
      Entry.wrongType(value.get(), entry.at().at(field), "a number", true, entry.issues());
      return Optional.of(standIn);
    }
    BigDecimal number = value.get().decimalValue();
    if (number.precision() > MAX_DIGITS || Math.abs((long) number.scale()) > MAX_DIGITS) {
      notPlain(entry, field, value.get().asText());
      return Optional.of(standIn);
    }
    return Optional.of(number);
  }

  private static void notPlain(Entry entry, String field, String value) {
    entry
        .issues()
        .add(
            IssueCode.OUT_OF_RANGE,
            entry.at().at(field),
            value,
            "The number is beyond every limit here, less than nothing, or finer than is kept.",
            "Write a plain number with at most six decimals, not less than nothing.");
  }

  /** A fraction of body mass, a number. */
  static Optional<Fraction> fraction(Entry entry, String field, Fraction standIn) {
    Optional<JsonNode> value = entry.find(field);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    Pointer place = entry.at().at(field);
    if (!value.get().isNumber()) {
      Entry.wrongType(value.get(), place, "a number such as 0.20", true, entry.issues());
      return Optional.of(standIn);
    }
    Parse<Fraction> parse = Fraction.of(value.get().decimalValue());
    if (parse instanceof Parse.Read<Fraction> read) {
      return Optional.of(read.value());
    }
    entry
        .issues()
        .add(
            IssueCode.OUT_OF_RANGE,
            place,
            value.get().asText(),
            "The fraction is " + ((Parse.Unreadable<Fraction>) parse).fault().meaning() + ".",
            "Write a number from 0.01 to 1 with at most six decimals, for example 0.20.");
    return Optional.of(standIn);
  }

  private static <T> Optional<T> quantity(
      Entry entry,
      String field,
      Function<String, Parse<T>> parser,
      T standIn,
      String needed,
      boolean showValue) {
    Optional<JsonNode> value = entry.find(field);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    Pointer place = entry.at().at(field);
    if (!value.get().isTextual()) {
      Entry.wrongType(value.get(), place, needed + ", a text", showValue, entry.issues());
      return Optional.of(standIn);
    }
    String text = value.get().asText();
    Parse<T> parse = parser.apply(text);
    if (parse instanceof Parse.Read<T> read) {
      return Optional.of(read.value());
    }
    Parse.Fault fault = ((Parse.Unreadable<T>) parse).fault();
    IssueCode code = code(fault);
    String message =
        showValue
            ? "\"" + Issues.shortened(text) + "\": " + fault.meaning() + "."
            : "The quantity cannot be used: " + fault.meaning() + ".";
    entry.issues().add(code, place, showValue ? text : "", message, remedy(code, needed));
    return Optional.of(standIn);
  }

  private static IssueCode code(Parse.Fault fault) {
    return switch (fault) {
      case EMPTY -> IssueCode.EMPTY_TEXT;
      case TOO_LONG -> IssueCode.TEXT_TOO_LONG;
      case NO_UNIT -> IssueCode.NO_UNIT;
      case UNKNOWN_UNIT -> IssueCode.UNKNOWN_UNIT;
      case NEGATIVE -> IssueCode.NEGATIVE;
      case TOO_LARGE -> IssueCode.OUT_OF_RANGE;
      case NOT_A_NUMBER, OUT_OF_ORDER, TOO_FINE -> IssueCode.NOT_A_QUANTITY;
    };
  }

  private static String remedy(IssueCode code, String needed) {
    return code == IssueCode.NO_UNIT || code == IssueCode.UNKNOWN_UNIT
        ? code.remedy()
        : "Write " + needed + ".";
  }
}
