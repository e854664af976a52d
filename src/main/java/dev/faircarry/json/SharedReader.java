package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Stow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads what the group shares: whole things, things in parts, counted units. */
final class SharedReader {
  /** Fields of which one at most says in what form an item comes. */
  private static final List<String> FORMS = List.of("mass", "parts", "count", "perPerson");

  private final Ids ids;

  SharedReader(Ids ids) {
    this.ids = ids;
  }

  SharedItem read(JsonNode node, Pointer at, Issues issues) {
    return Entry.of(node, at, issues).map(this::item).orElseGet(this::standIn);
  }

  private SharedItem item(Entry entry) {
    String id = ids.of(entry);
    SharedItem item =
        new SharedItem(
            id,
            Names.of(entry, id),
            entry.text("owner"),
            entry.texts("covers", Limits.COVERS_PER_ITEM).orElse(List.of()),
            entry.whole("sleeps", 1),
            Quantities.cost(entry, "cost"),
            entry.text("goesInto"),
            onDays(entry),
            entry.text("purpose"),
            form(entry));
    return item;
  }

  private SharedItem standIn() {
    String id = ids.next();
    return new SharedItem(
        id,
        id,
        Optional.empty(),
        List.of(),
        OptionalInt.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        wholeStandIn());
  }

  private static Form wholeStandIn() {
    return new Form.Whole(
        Quantities.NO_MASS,
        MassFrom.LABEL,
        Optional.empty(),
        Stow.INSIDE,
        Optional.empty(),
        Optional.empty());
  }

  private static List<Integer> onDays(Entry entry) {
    Optional<List<Integer>> days = entry.wholes("onDays", Limits.DAYS, 1);
    boolean empty = entry.find("onDays").filter(n -> n.isArray() && n.isEmpty()).isPresent();
    if (empty) {
      entry
          .issues()
          .add(
              IssueCode.EMPTY_LIST,
              entry.at().at("onDays"),
              "",
              "The list is empty: the item would never be there.",
              "Name a day, or leave \"onDays\" out for all days.");
    }
    return days.orElse(List.of());
  }

  private static Form form(Entry entry) {
    List<String> stated = FORMS.stream().filter(entry::has).toList();
    if (stated.size() > 1) {
      entry
          .issues()
          .add(
              IssueCode.CONFLICTING_FIELDS,
              entry.at(),
              String.join(", ", stated),
              "The item states " + String.join(" and ", stated) + " at once.",
              "Keep \"mass\" for one thing, \"parts\" for parts, \"count\" or \"perPerson\" with"
                  + " \"unitMass\" for units.");
      // Which form is meant is unclear; the parts are kept for the sake of those who name them.
      return entry.has("parts") ? new Form.Parts(parts(entry)) : wholeStandIn();
    }
    Form form = stated.isEmpty() ? unstated(entry) : stated(stated.get(0), entry);
    entry.done();
    return form;
  }

  private static Form stated(String by, Entry entry) {
    return switch (by) {
      case "mass" -> whole(entry);
      case "parts" -> new Form.Parts(parts(entry));
      default -> counted(entry);
    };
  }

  private static Form unstated(Entry entry) {
    if (entry.has("unitMass")) {
      return counted(entry);
    }
    entry
        .issues()
        .add(
            IssueCode.MISSING,
            entry.at().at("mass"),
            "",
            "Nothing says in what form the item comes.",
            "Add \"mass\" for one thing, \"parts\" for parts, \"count\" or \"perPerson\" with"
                + " \"unitMass\" for units.");
    return whole(entry);
  }

  private static Form whole(Entry entry) {
    return new Form.Whole(
        Quantities.mass(entry, "mass").orElse(Quantities.MASS_STAND_IN),
        HikerReader.massFrom(entry),
        Quantities.volume(entry, "volume"),
        HikerReader.stow(entry),
        UseReader.evenly(entry),
        UseReader.contains(entry));
  }

  private static Form counted(Entry entry) {
    return new Form.Counted(
        quantity(entry),
        Quantities.neededMass(entry, "unitMass"),
        HikerReader.massFrom(entry),
        Quantities.volume(entry, "unitVolume"),
        HikerReader.stow(entry),
        UseReader.ofUnits(entry));
  }

  private static Form.Quantity quantity(Entry entry) {
    Optional<Entry> perPerson = entry.child("perPerson");
    if (perPerson.isPresent()) {
      int each = perPerson.get().neededWhole("countPerDay", 1);
      perPerson.get().done();
      return new Form.Quantity.PerPerson(each);
    }
    if (entry.has("perPerson")) {
      return new Form.Quantity.PerPerson(1);
    }
    return new Form.Quantity.Fixed(entry.neededWhole("count", 1));
  }

  private static List<Form.Part> parts(Entry item) {
    List<JsonNode> values = item.list("parts", Limits.PARTS_PER_ITEM).orElse(List.of());
    Ids ids = new Ids("p", values);
    List<Form.Part> parts = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      Entry.of(values.get(i), item.at().at("parts").at(i), item.issues())
          .ifPresentOrElse(
              entry -> parts.add(part(entry, ids)), () -> parts.add(standIn(ids.next())));
    }
    return parts;
  }

  private static Form.Part part(Entry entry, Ids ids) {
    String id = ids.of(entry);
    Form.Part part =
        new Form.Part(
            id,
            Names.of(entry, id),
            Quantities.neededMass(entry, "mass"),
            HikerReader.massFrom(entry),
            Quantities.volume(entry, "volume"),
            HikerReader.stow(entry));
    entry.done();
    return part;
  }

  private static Form.Part standIn(String id) {
    return new Form.Part(id, id, Quantities.NO_MASS, MassFrom.LABEL, Optional.empty(), Stow.INSIDE);
  }
}
