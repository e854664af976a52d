package dev.faircarry.provision;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gathers items, figures and notes while a provision is worked out. */
final class Draft {
  private final List<Provision.Item> items = new ArrayList<>();
  private final List<Figure> figures = new ArrayList<>();
  private final List<Note> notes = new ArrayList<>();

  /** The stated amount, or the default, noted with its source either way. */
  BigDecimal pick(
      String name, Optional<BigDecimal> given, BigDecimal otherwise, String unit, String source) {
    figures.add(
        given
            .map(g -> Figure.given(name, g, unit))
            .orElseGet(() -> Figure.assumed(name, otherwise, unit, source)));
    return given.orElse(otherwise);
  }

  /** A step on the way, to three decimals. */
  void computed(String name, double amount, String unit, String source) {
    figures.add(
        Figure.computed(
            name, BigDecimal.valueOf(amount).setScale(3, RoundingMode.HALF_UP), unit, source));
  }

  void item(Provision.Item item) {
    items.add(item);
  }

  void note(Note.Code code, String message, String remedy) {
    notes.add(new Note(code, message, remedy));
  }

  Provision provision() {
    return new Provision(items, figures, notes);
  }
}
