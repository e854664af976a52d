package dev.faircarry.csv;

import dev.faircarry.check.IssueCode;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Use;
import dev.faircarry.unit.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the group shares. A row with {@code part} empty is an item; of an item in parts that row has
 * no mass, and each part has a row of its own with the item's id.
 */
final class SharedTable {
  /** Stands in for an unreadable mass: nothing that is left of a thing can be more. */
  static final Mass MASS_STAND_IN = Mass.ofMilligrams(Limits.ITEM_MASS_MILLIGRAMS);

  private static final List<String> NOT_OF_A_PART =
      List.of(
          "count",
          "perPersonDay",
          "use",
          "perDay",
          "leaves",
          "onDays",
          "covers",
          "owner",
          "sleeps",
          "goesInto",
          "containsKind",
          "containsVolume",
          "cost",
          "purpose");
  private static final List<String> NOT_OF_AN_ITEM_IN_PARTS =
      List.of(
          "mass",
          "massFrom",
          "volume",
          "stow",
          "count",
          "perPersonDay",
          "use",
          "perDay",
          "leaves",
          "containsKind",
          "containsVolume");

  private SharedTable() {}

  /**
   * An item.
   *
   * @param parts the rows of its parts; none for a whole thing or counted units
   */
  static SharedItem read(Row row, String id, List<Row> parts) {
    return new SharedItem(
        id,
        FreeIds.name(row, id),
        row.text("owner"),
        row.texts("covers"),
        row.whole("sleeps", 1),
        row.cost("cost"),
        row.text("goesInto"),
        row.wholes("onDays", 1),
        row.text("purpose"),
        form(row, parts));
  }

  /** An item of which only the rows of its parts are there. */
  static SharedItem ofParts(String id, List<Row> parts) {
    return new SharedItem(
        id,
        id,
        Optional.empty(),
        List.of(),
        OptionalInt.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        new Form.Parts(parts.stream().map(SharedTable::part).toList()));
  }

  private static Form form(Row row, List<Row> parts) {
    if (!parts.isEmpty()) {
      row.refuse(NOT_OF_AN_ITEM_IN_PARTS, "The item is in parts, and each part has its own.");
      return new Form.Parts(parts.stream().map(SharedTable::part).toList());
    }
    if (row.has("count") || row.has("perPersonDay")) {
      row.refuse(List.of("containsKind", "containsVolume"), "Counted units contain nothing.");
      return counted(row);
    }
    row.refuse(List.of("perDay"), "Only counted units are used by number.");
    return new Form.Whole(
        KitTable.neededMass(row),
        row.word("massFrom", MassFrom.values(), MassFrom.LABEL),
        row.volume("volume"),
        row.word("stow", Stow.values(), Stow.INSIDE),
        KitTable.evenly(row),
        KitTable.contains(row));
  }

  private static Form.Part part(Row row) {
    row.refuse(NOT_OF_A_PART, "A part has none of its own; the item may.");
    String id = row.text("part").orElse("");
    return new Form.Part(
        id,
        row.text("name").orElse(id),
        KitTable.neededMass(row),
        row.word("massFrom", MassFrom.values(), MassFrom.LABEL),
        row.volume("volume"),
        row.word("stow", Stow.values(), Stow.INSIDE));
  }

  private static Form.Counted counted(Row row) {
    if (row.has("count") && row.has("perPersonDay")) {
      row.note(
          IssueCode.CONFLICTING_FIELDS,
          "perPersonDay",
          "The item states \"count\" and \"perPersonDay\" at once.",
          "Keep one of the two.");
    }
    Form.Quantity quantity =
        row.has("count")
            ? new Form.Quantity.Fixed(row.whole("count", 1).orElse(1))
            : new Form.Quantity.PerPerson(row.whole("perPersonDay", 1).orElse(1));
    return new Form.Counted(
        quantity,
        KitTable.neededMass(row),
        row.word("massFrom", MassFrom.values(), MassFrom.LABEL),
        row.volume("volume"),
        row.word("stow", Stow.values(), Stow.INSIDE),
        use(row));
  }

  private static Optional<Use> use(Row row) {
    Optional<HowUsed> use = row.word("use", List.of(HowUsed.values()), HowUsed.UNITS_PER_DAY);
    if (use.isEmpty() && (row.has("perDay") || row.has("leaves"))) {
      row.missing("use", "Write units-per-day or evenly.");
    }
    if (use.isEmpty()) {
      return Optional.empty();
    }
    if (use.get() == HowUsed.EVENLY) {
      row.refuse(List.of("perDay"), "What is used evenly is not used by number.");
      return Optional.of(new Use.Evenly(KitTable.leaves(row)));
    }
    return Optional.of(new Use.UnitsPerDay(perDay(row), KitTable.leaves(row)));
  }

  private static Use.PerDay perDay(Row row) {
    List<Integer> units = row.wholes("perDay", 1);
    if (units.isEmpty()) {
      return new Use.PerDay.FollowsParty();
    }
    boolean one = units.size() == 1 && !row.text("perDay").orElse("").contains("|");
    return one ? new Use.PerDay.Same(units.get(0)) : new Use.PerDay.Listed(units);
  }

  /** The row of an item, and those of its parts. */
  static List<Map<String, String>> written(SharedItem item) {
    Cells cells =
        new Cells()
            .put("id", item.id())
            .put("name", item.name())
            .text("owner", item.owner())
            .list("covers", item.covers())
            .whole("sleeps", item.sleeps())
            .cost("cost", item.cost())
            .text("goesInto", item.goesInto())
            .list("onDays", item.onDays())
            .text("purpose", item.purpose());
    return item.form().match(new SharedRows(item.id(), cells));
  }

  /** Rows of an item, by its form. */
  private record SharedRows(String id, Cells item)
      implements Form.Cases<List<Map<String, String>>> {
    @Override
    public List<Map<String, String>> whole(Form.Whole form) {
      item.put("mass", form.mass().entered())
          .word("massFrom", form.massFrom(), MassFrom.LABEL)
          .volume("volume", form.volume())
          .word("stow", form.stow(), Stow.INSIDE)
          .contains(form.contains());
      form.use().ifPresent(use -> item.put("use", HowUsed.EVENLY.text()).leaves(use.leaves()));
      return List.of(item.map());
    }

    @Override
    public List<Map<String, String>> parts(Form.Parts form) {
      List<Map<String, String>> rows = new ArrayList<>(List.of(item.map()));
      for (Form.Part part : form.parts()) {
        rows.add(
            new Cells()
                .put("id", id)
                .put("part", part.id())
                .put("name", part.name())
                .put("mass", part.mass().entered())
                .word("massFrom", part.massFrom(), MassFrom.LABEL)
                .volume("volume", part.volume())
                .word("stow", part.stow(), Stow.INSIDE)
                .map());
      }
      return rows;
    }

    @Override
    public List<Map<String, String>> counted(Form.Counted form) {
      if (form.quantity() instanceof Form.Quantity.Fixed fixed) {
        item.put("count", String.valueOf(fixed.count()));
      } else {
        int each = ((Form.Quantity.PerPerson) form.quantity()).countPerDay();
        item.put("perPersonDay", String.valueOf(each));
      }
      item.put("mass", form.unitMass().entered())
          .word("massFrom", form.massFrom(), MassFrom.LABEL)
          .volume("volume", form.unitVolume())
          .word("stow", form.stow(), Stow.INSIDE);
      form.use().ifPresent(this::use);
      return List.of(item.map());
    }

    private void use(Use use) {
      if (use instanceof Use.Evenly evenly) {
        item.put("use", HowUsed.EVENLY.text()).leaves(evenly.leaves());
        return;
      }
      Use.UnitsPerDay daily = (Use.UnitsPerDay) use;
      item.put("use", HowUsed.UNITS_PER_DAY.text()).leaves(daily.leaves());
      if (daily.perDay() instanceof Use.PerDay.Same same) {
        item.put("perDay", String.valueOf(same.units()));
      } else if (daily.perDay() instanceof Use.PerDay.Listed listed) {
        // A list of one day needs the stroke, or it would be a number for every day.
        boolean one = listed.units().size() == 1;
        item.put("perDay", CellList.cell(listed.units()) + (one ? "|" : ""));
      }
    }
  }
}
