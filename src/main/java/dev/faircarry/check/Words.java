package dev.faircarry.check;

import dev.faircarry.unit.MassText;

/** How findings name things and masses. */
final class Words {
  private Words() {}

  static String of(Goods.Good good) {
    String name = "“" + good.item().name() + "”";
    return good.ref().part().map(part -> name + " (" + part + ")").orElse(name);
  }

  static String grams(long milligrams) {
    return MassText.plainGrams(milligrams) + " g";
  }

  static String days(java.util.List<Integer> days) {
    return days.size() == 1
        ? "on day " + days.get(0)
        : "on days " + days.get(0) + " to " + days.get(days.size() - 1);
  }
}
