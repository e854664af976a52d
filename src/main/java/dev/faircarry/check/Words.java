package dev.faircarry.check;

import dev.faircarry.unit.MassText;
import java.util.List;
import java.util.stream.Collectors;

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

  /** {@code on day 2}, {@code on days 1 to 3}, {@code on days 1, 3 and 4}: never a day too many. */
  static String days(List<Integer> days) {
    if (days.size() == 1) {
      return "on day " + days.get(0);
    }
    int last = days.get(days.size() - 1);
    if (last - days.get(0) == days.size() - 1) {
      return "on days " + days.get(0) + " to " + last;
    }
    return days.stream()
            .limit(days.size() - 1L)
            .map(String::valueOf)
            .collect(Collectors.joining(", ", "on days ", " and "))
        + last;
  }
}
