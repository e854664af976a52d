package dev.faircarry.housefixture.unit;

import java.util.List;

/** Counts in halves wherever it can. */
final class Halves {
  float[] field = {};
  List<Double> list = List.of();
  long whole;

  double result() {
    return 0;
  }

  long parameter(Float half) {
    return half.longValue();
  }
}
