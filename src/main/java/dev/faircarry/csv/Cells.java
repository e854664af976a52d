package dev.faircarry.csv;

import dev.faircarry.trip.Contains;
import dev.faircarry.unit.Cost;
import dev.faircarry.unit.Fraction;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Volume;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** The cells of a row to be written. What equals an assumption is left out. */
final class Cells {
  private final Map<String, String> cells = new HashMap<>();

  Map<String, String> map() {
    return Map.copyOf(cells);
  }

  Cells put(String column, String text) {
    cells.put(column, text);
    return this;
  }

  Cells text(String column, Optional<String> text) {
    text.ifPresent(t -> put(column, t));
    return this;
  }

  Cells whole(String column, OptionalInt number) {
    number.ifPresent(n -> put(column, String.valueOf(n)));
    return this;
  }

  Cells flag(String column, boolean flag) {
    return flag ? put(column, "true") : this;
  }

  Cells word(String column, Enum<?> word, Enum<?> assumed) {
    return word == assumed ? this : put(column, Row.wordOf(word));
  }

  Cells list(String column, List<?> entries) {
    return entries.isEmpty() ? this : put(column, CellList.cell(entries));
  }

  Cells mass(String column, Optional<Mass> mass) {
    return text(column, mass.map(Mass::entered));
  }

  Cells volume(String column, Optional<Volume> volume) {
    return text(column, volume.map(Volume::entered));
  }

  Cells cost(String column, Optional<Cost> cost) {
    return text(column, cost.map(Cost::entered));
  }

  Cells fraction(String column, Optional<Fraction> fraction) {
    return text(column, fraction.map(f -> f.entered().toPlainString()));
  }

  Cells leaves(Mass leaves) {
    return leaves.equals(Row.NO_MASS) ? this : put("leaves", leaves.entered());
  }

  Cells contains(Optional<Contains> contains) {
    contains.ifPresent(
        c -> put("containsKind", c.kind()).put("containsVolume", c.volume().entered()));
    return this;
  }
}
