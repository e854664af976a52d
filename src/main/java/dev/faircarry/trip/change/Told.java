package dev.faircarry.trip.change;

/** How notes name things. */
final class Told {
  private Told() {}

  static String name(String name) {
    return "“" + name + "”";
  }
}
