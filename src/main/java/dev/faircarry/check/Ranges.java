package dev.faircarry.check;

import dev.faircarry.trip.Contains;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.Use;
import dev.faircarry.unit.Fraction;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.MassText;
import dev.faircarry.unit.Volume;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Whether single values keep their limits; what does not is noted with its place. */
final class Ranges {
  private final Issues issues;

  Ranges(Issues issues) {
    this.issues = issues;
  }

  Issues issues() {
    return issues;
  }

  boolean number(Pointer at, long value, long least, long most) {
    if (value >= least && value <= most) {
      return true;
    }
    issues.add(
        IssueCode.OUT_OF_RANGE,
        at,
        String.valueOf(value),
        "The number " + value + " is outside " + least + " to " + most + ".",
        "Write a whole number from " + least + " to " + most + ".");
    return false;
  }

  void fraction(Pointer at, Fraction fraction) {
    if (fraction.millionths() < Limits.MIN_FRACTION_MILLIONTHS
        || fraction.millionths() > Limits.MAX_FRACTION_MILLIONTHS) {
      issues.add(
          IssueCode.OUT_OF_RANGE,
          at,
          fraction.entered().toPlainString(),
          "The fraction of body mass is outside 0.01 to 1.",
          "Write a number from 0.01 to 1, for example 0.20.");
    }
  }

  void itemMass(Pointer at, Mass mass) {
    mass(at, mass, 0, Limits.ITEM_MASS_MILLIGRAMS, mass.entered());
  }

  /** A mass that must not be told: the issue leaves it out. */
  void privateMass(Pointer at, Mass mass, long least, long most) {
    mass(at, mass, least, most, "");
  }

  private void mass(Pointer at, Mass mass, long least, long most, String value) {
    if (mass.milligrams() >= least && mass.milligrams() <= most) {
      return;
    }
    String limits = MassText.plainGrams(least) + " g to " + MassText.plainGrams(most) + " g";
    issues.add(
        IssueCode.OUT_OF_RANGE,
        at,
        value,
        "The mass is outside " + limits + ".",
        "Write a mass from " + limits + ", with its unit.");
  }

  void volume(Pointer at, Optional<Volume> volume) {
    if (volume.isPresent() && volume.get().milliliters() > Limits.VOLUME_MILLILITERS) {
      String most = Limits.VOLUME_MILLILITERS / 1000 + " L";
      issues.add(
          IssueCode.OUT_OF_RANGE,
          at,
          volume.get().entered(),
          "The volume is more than " + most + ".",
          "Write a volume of at most " + most + ".");
    }
  }

  void contains(Pointer at, Optional<Contains> contains) {
    if (contains.isPresent()) {
      word(at.at("kind"), contains.get().kind());
      volume(at.at("volume"), Optional.of(contains.get().volume()));
    }
  }

  void evenly(Pointer at, Use.Evenly use, Mass whole) {
    leaves(at, use.leaves(), whole);
  }

  void leaves(Pointer use, Mass leaves, Mass whole) {
    if (leaves.milligrams() > whole.milligrams()) {
      issues.add(
          IssueCode.LEAVES_TOO_MUCH,
          use.at("leaves"),
          leaves.entered(),
          leaves.entered() + " is left of " + whole.entered() + ".");
    }
  }

  void id(Pointer at, String id) {
    Optional<IssueCode> fault = IdText.fault(id);
    if (fault.isPresent()) {
      issues.add(fault.get(), at, id, "This cannot be an id: " + fault.get().meaning());
    }
  }

  /** Id and name of a thing. A name that only repeats the id is judged once, as an id. */
  void named(Pointer thing, String id, String name) {
    id(thing.at("id"), id);
    if (!name.equals(id)) {
      name(thing.at("name"), name);
    }
  }

  void name(Pointer at, String name) {
    text(at, name, Limits.NAME_LENGTH);
  }

  /** Names of needs, kinds and parties. */
  boolean word(Pointer at, String word) {
    return text(at, word, Limits.ID_LENGTH);
  }

  private boolean text(Pointer at, String text, int most) {
    Optional<IssueCode> fault = PlainText.fault(text, most);
    if (fault.isEmpty()) {
      return true;
    }
    switch (fault.get()) {
      case EMPTY_TEXT -> issues.add(IssueCode.EMPTY_TEXT, at, text, "The text is empty.");
      case TEXT_TOO_LONG ->
          issues.add(
              IssueCode.TEXT_TOO_LONG,
              at,
              text,
              "The text is longer than " + most + " characters.",
              "Shorten it to at most " + most + " characters.");
      default ->
          issues.add(
              IssueCode.BAD_TEXT,
              at,
              text,
              "The text holds control characters or half characters.");
    }
    return false;
  }

  /** Lists of needs that an item covers. */
  void covers(Pointer at, List<String> covers) {
    if (!size(at, covers, Limits.COVERS_PER_ITEM)) {
      return;
    }
    for (int i = 0; i < covers.size(); i++) {
      word(at.at(i), covers.get(i));
    }
    uniqueNames(at, covers);
  }

  boolean size(Pointer at, List<?> list, int most) {
    if (list.size() <= most) {
      return true;
    }
    issues.add(
        IssueCode.TOO_MANY,
        at,
        String.valueOf(list.size()),
        "The list has " + list.size() + " entries; at most " + most + " are allowed.",
        "Shorten the list to at most " + most + " entries.");
    return false;
  }

  boolean notEmpty(Pointer at, List<?> list) {
    if (list.isEmpty()) {
      issues.add(IssueCode.EMPTY_LIST, at, "", "The list is empty.");
    }
    return !list.isEmpty();
  }

  void uniqueNames(Pointer at, List<String> names) {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < names.size(); i++) {
      if (!seen.add(names.get(i))) {
        String name = Issues.shortened(names.get(i));
        issues.add(
            IssueCode.DUPLICATE_NAME,
            at.at(i),
            names.get(i),
            "\"" + name + "\" is named twice in this list.");
      }
    }
  }

  /**
   * @param what what the ids belong to, for the message
   */
  void uniqueIds(Pointer at, List<String> ids, String what) {
    Map<String, Integer> first = new HashMap<>();
    for (int i = 0; i < ids.size(); i++) {
      Integer earlier = first.putIfAbsent(ids.get(i), i);
      if (earlier != null) {
        issues.add(
            IssueCode.DUPLICATE_ID,
            at.at(i).at("id"),
            ids.get(i),
            "The id of this "
                + what
                + " is also that of "
                + at.at(earlier).text()
                + ": \""
                + Issues.shortened(ids.get(i))
                + "\".");
      }
    }
  }
}
