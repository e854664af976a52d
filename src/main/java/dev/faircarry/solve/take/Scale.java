package dev.faircarry.solve.take;

import dev.faircarry.choose.Candidate;
import dev.faircarry.choose.Question;
import java.math.BigInteger;

/**
 * Sums of a question in the solver's small integers.
 *
 * <p>Masses are divided by their greatest common divisor. If even so all candidates together would
 * pass the solver's bound, masses are rounded half up to ever coarser steps, and the answer says
 * which.
 *
 * @param massStepMilligrams 1 when the masses are exact
 */
record Scale(long massUnitMilligrams, long massStepMilligrams, long priceUnitHundredths) {
  /** Choco keeps its variables below 21,474,836. */
  static final long MOST = 20_000_000L;

  static Scale of(Question question) {
    long massUnit = 0;
    long priceUnit = 0;
    long massSum = 0;
    long priceSum = 0;
    for (Candidate candidate : question.candidates()) {
      massUnit = gcd(massUnit, candidate.massMilligrams());
      priceUnit = gcd(priceUnit, candidate.priceHundredths());
      massSum += candidate.massMilligrams() * candidate.most();
      priceSum += candidate.priceHundredths() * candidate.most();
    }
    long unit = Math.max(1, massUnit);
    long step = 1;
    if (massSum / unit > MOST) {
      unit = 1;
      while (massSum / unit + question.candidates().size() > MOST) {
        unit *= 10;
      }
      step = unit;
    }
    if (priceSum / Math.max(1, priceUnit) > MOST) {
      throw new IllegalArgumentException("offers cost more together than can be summed");
    }
    return new Scale(unit, step, Math.max(1, priceUnit));
  }

  int mass(Candidate candidate) {
    return Math.toIntExact(
        (candidate.massMilligrams() + massUnitMilligrams / 2) / massUnitMilligrams);
  }

  int price(Candidate candidate) {
    return Math.toIntExact(candidate.priceHundredths() / priceUnitHundredths);
  }

  private static long gcd(long a, long b) {
    return BigInteger.valueOf(a).gcd(BigInteger.valueOf(b)).longValueExact();
  }
}
