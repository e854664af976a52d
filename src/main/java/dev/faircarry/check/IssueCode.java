package dev.faircarry.check;

import java.util.Locale;

/** What can be wrong with a document. Each code has a smallest sample beside the classes. */
public enum IssueCode {
  DOCUMENT_TOO_LARGE(
      "The document has more bytes than are read.",
      "Send less: leave out what the group does not need, or split the trip."),
  NOT_UTF_8("The bytes are not UTF-8 text.", "Save the document as UTF-8."),
  NOT_JSON("The text is not one JSON value.", "Correct the JSON at the place named."),
  NOT_CSV(
      "The text is not a table (CSV, RFC 4180).",
      "Save it as CSV with a row of column names; put what holds quotes into quotes, doubled"
          + " inside."),
  RAGGED_ROW(
      "A row of a table has more cells than the table has columns.",
      "Put a cell that holds the separator into quotes, or remove the cells that are too many."),
  TOO_DEEP(
      "Lists and objects are nested deeper than any trip or split needs.",
      "Take away the nesting; no field goes that deep."),
  DUPLICATE_FIELD(
      "An object has the same field twice.", "Keep one of the two; which is meant is unclear."),
  UNKNOWN_FORMAT(
      "The format of the document is not the one that is read here.",
      "Set \"format\" to the value named."),
  WRONG_TYPE("A value is of another kind than the field holds.", "Write the kind of value named."),
  MISSING("A field that is needed is not there.", "Add the field."),
  UNKNOWN_FIELD("A field is not known here.", "Check the spelling, or leave the field out."),
  CONFLICTING_FIELDS(
      "Fields are there together that exclude each other.", "Keep one of the fields named."),
  EMPTY_TEXT("A text has nothing in it.", "Write something, or leave the field out."),
  TEXT_TOO_LONG("A text is longer than allowed.", "Shorten the text."),
  BAD_TEXT(
      "A text holds control characters or half characters.",
      "Use printable characters of any script."),
  BAD_ID(
      "An id holds characters that an address cannot carry.",
      "Use letters a to z, digits, point, hyphen, underscore and tilde; start with a letter or"
          + " digit."),
  UNKNOWN_WORD("A value is none of the words that the field knows.", "Use one of the words named."),
  NO_UNIT("A quantity has no unit.", "Write the unit behind the number, as in \"31 oz\"."),
  UNKNOWN_UNIT(
      "The unit of a quantity is not known here.",
      "Use mg, g, kg, oz or lb for a mass; mL, L, fl oz, qt, gal or cu in for a volume; m, km, ft"
          + " or mi for a length."),
  NOT_A_QUANTITY(
      "A text cannot be read as a quantity.",
      "Write plain decimal numbers with a point, each with its unit, larger units first, as in \"1"
          + " lb 12 oz\"."),
  NEGATIVE("A quantity is less than nothing.", "Write nothing or more."),
  OUT_OF_RANGE("A number or quantity is outside its limits.", "Stay within the limits named."),
  TOO_MANY("A list has more entries than allowed.", "Shorten the list."),
  EMPTY_LIST(
      "A list that needs an entry has none.", "Name at least one, or leave the whole thing out."),
  TOO_MANY_PIECES(
      "All whole items, parts and units together are more than allowed.",
      "Lower the counts, or pack units together."),
  EMPTY_GROUP("The trip has no hikers.", "Add at least one hiker."),
  NOBODY_PRESENT(
      "On some day of the trip everybody has left.",
      "Shorten the trip, or let somebody stay to its end."),
  NO_TARGET(
      "A hiker has neither a body mass nor a target load.",
      "State bodyMass, or targetLoad if the body mass shall not be told."),
  DUPLICATE_ID("Two things of a kind have the same id.", "Give each its own id."),
  DUPLICATE_NAME("A list names the same thing twice.", "Keep one of the two."),
  UNKNOWN_HIKER("A hiker is named whom the trip does not have.", "Name the id of a hiker."),
  UNKNOWN_PIECE(
      "A shared item or part is named that the trip does not have.",
      "Name a shared item by its id, a part by \"item/part\"."),
  UNKNOWN_PARTY("A party is named that nobody belongs to.", "Name a party that some hiker states."),
  OVERLAP(
      "A rule keeps apart two references that share a piece.",
      "Name the whole item or its parts, not both."),
  NO_CONTAINER(
      "Something must travel in a kind of container that nobody brings.",
      "Add a container with \"contains\" of that kind, or take \"goesInto\" away."),
  NO_SUCH_DAY("A day is named that the trip does not have.", "Name a day of the trip."),
  DAYS_NOT_RISING("Days do not rise.", "List each day once, the earliest first."),
  USE_WITH_DAYS(
      "A thing is both used up and there on some days only.",
      "Keep \"use\" or \"onDays\", not both."),
  WRONG_LENGTH(
      "A list by day has not one entry for each day.",
      "Write one entry for each day, day 1 first."),
  UNKNOWN_THING(
      "A thing is named that the trip does not have.",
      "Name a shared item by its id, a thing of a kit by \"hiker/item\"."),
  NEED_UNITS_DIFFER(
      "A need is counted in one place and measured as a volume in another.",
      "Write numbers, or volumes, wherever the need is named."),
  CONTRADICTION(
      "Numbers that belong together contradict each other.", "Correct one of the numbers named."),
  LEAVES_TOO_MUCH(
      "More is left of a thing than there was.", "State in \"leaves\" at most the whole mass.");

  private final String meaning;
  private final String remedy;

  IssueCode(String meaning, String remedy) {
    this.meaning = meaning;
    this.remedy = remedy;
  }

  /** The code as it stands in documents: {@code unknown-field}. */
  public String text() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What it means, in one sentence. */
  public String meaning() {
    return meaning;
  }

  /** What to do about it, in one sentence that fits every case of it. */
  public String remedy() {
    return remedy;
  }
}
