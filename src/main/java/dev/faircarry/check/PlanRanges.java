package dev.faircarry.check;

import dev.faircarry.trip.plan.PlanLimits;
import dev.faircarry.unit.Fraction;
import dev.faircarry.unit.Length;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Temperature;
import dev.faircarry.unit.Volume;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;

/** Whether single values of a plan keep their limits. */
final class PlanRanges {
  private final Ranges ranges;

  PlanRanges(Ranges ranges) {
    this.ranges = ranges;
  }

  Ranges ranges() {
    return ranges;
  }

  void outside(Pointer at, String value, String what, String limits) {
    ranges
        .issues()
        .add(
            IssueCode.OUT_OF_RANGE,
            at,
            value,
            "The " + what + " is outside " + limits + ".",
            "Write a " + what + " within " + limits + ".");
  }

  void number(Pointer at, OptionalInt number, int least, int most) {
    number.ifPresent(n -> ranges.number(at, n, least, most));
  }

  void decimal(Pointer at, Optional<BigDecimal> number, BigDecimal least, BigDecimal most) {
    number
        .filter(n -> n.compareTo(least) < 0 || n.compareTo(most) > 0)
        .ifPresent(
            n ->
                outside(
                    at,
                    n.toString(),
                    "number",
                    least.toPlainString() + " to " + most.toPlainString()));
  }

  void fraction(
      Pointer at, Optional<Fraction> fraction, long leastMillionths, long mostMillionths) {
    fraction
        .filter(f -> f.millionths() < leastMillionths || f.millionths() > mostMillionths)
        .ifPresent(
            f ->
                outside(
                    at,
                    f.entered().toPlainString(),
                    "number",
                    plain(leastMillionths, 6) + " to " + plain(mostMillionths, 6)));
  }

  void length(Pointer at, Length length, long leastMillimeters, long mostMillimeters) {
    if (length.millimeters() < leastMillimeters || length.millimeters() > mostMillimeters) {
      outside(
          at,
          length.entered(),
          "length",
          plain(leastMillimeters, 3) + " m to " + plain(mostMillimeters, 3) + " m");
    }
  }

  /** A height above the sea where people camp. */
  void height(Pointer at, Optional<Length> height) {
    height
        .filter(
            h ->
                h.millimeters() < PlanLimits.MIN_HEIGHT_MILLIMETERS
                    || h.millimeters() > PlanLimits.MAX_HEIGHT_MILLIMETERS)
        .ifPresent(
            h ->
                outside(
                    at,
                    h.entered(),
                    "height",
                    plain(PlanLimits.MIN_HEIGHT_MILLIMETERS, 3)
                        + " m to "
                        + plain(PlanLimits.MAX_HEIGHT_MILLIMETERS, 3)
                        + " m"));
  }

  void temperature(Pointer at, Optional<Temperature> temperature, long least, long most) {
    temperature
        .filter(t -> t.millicelsius() < least || t.millicelsius() > most)
        .ifPresent(
            t ->
                outside(
                    at,
                    t.entered(),
                    "temperature",
                    plain(least, 3) + " °C to " + plain(most, 3) + " °C"));
  }

  void volume(Pointer at, Optional<Volume> volume, long leastMilliliters, long mostMilliliters) {
    volume
        .filter(v -> v.milliliters() < leastMilliliters || v.milliliters() > mostMilliliters)
        .ifPresent(
            v ->
                outside(
                    at,
                    v.entered(),
                    "volume",
                    leastMilliliters + " mL to " + mostMilliliters + " mL"));
  }

  void mass(Pointer at, Optional<Mass> mass) {
    mass.ifPresent(m -> ranges.itemMass(at, m));
  }

  void leaves(Pointer at, Optional<Mass> leaves, Mass whole) {
    leaves.ifPresent(l -> ranges.leaves(at, l, whole));
  }

  private static String plain(long number, int decimals) {
    BigDecimal plain = BigDecimal.valueOf(number, decimals).stripTrailingZeros();
    return plain.toPlainString();
  }
}
