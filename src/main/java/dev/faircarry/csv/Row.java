package dev.faircarry.csv;

import dev.faircarry.check.Cell;
import dev.faircarry.check.IdText;
import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import dev.faircarry.unit.Cost;
import dev.faircarry.unit.Fraction;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Parse;
import dev.faircarry.unit.Volume;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;

/**
 * One row of a table, cell by cell. What cannot be read is noted, and a stand-in given in its
 * place; an empty cell says nothing. Limits are judged later.
 */
final class Row {
  static final Mass NO_MASS = Mass.ofMilligrams(0);
  private static final int INT_DIGITS = 9;
  private static final int FRACTION_DIGITS = 200;
  private static final Volume VOLUME_STAND_IN = new Volume("0 L", 0);
  private static final Set<String> YES = Set.of("true", "yes");
  private static final Set<String> NO = Set.of("false", "no");

  private final Table table;
  private final int number;
  private final Map<String, String> cells;
  private final CellIssues issues;

  /**
   * @param number as a spreadsheet counts
   * @param cells column to what stands there; empty cells left out
   */
  Row(Table table, int number, Map<String, String> cells, CellIssues issues) {
    this.table = table;
    this.number = number;
    this.cells = cells;
    this.issues = issues;
  }

  int number() {
    return number;
  }

  Cell at(String column) {
    return new Cell(table.text(), number, column);
  }

  /** Whether its table has such a column. */
  boolean knows(String column) {
    return table.columns().contains(column);
  }

  boolean has(String column) {
    return cells.containsKey(column);
  }

  Optional<String> text(String column) {
    return Optional.ofNullable(cells.get(column));
  }

  /** Notes something about a cell, with what stands in it. */
  void note(IssueCode code, String column, String message, String remedy) {
    String value = cells.getOrDefault(column, "");
    issues.add(code, at(column), table.shows(column, value) ? value : "", message, remedy);
  }

  /** A text that must be there. */
  String needed(String column) {
    if (!has(column)) {
      missing(column, "Fill the cell.");
    }
    return text(column).orElse("");
  }

  /** Notes what is wrong with a text as an id, unless its cell is noted already. */
  void id(String column, String id) {
    Optional<IssueCode> fault = IdText.fault(id);
    if (fault.isPresent() && !issues.has(at(column))) {
      note(
          fault.get(),
          column,
          "This cannot be an id: " + fault.get().meaning(),
          fault.get().remedy());
    }
  }

  /** A whole number within limits. */
  int within(String column, int standIn, int most) {
    int number = whole(column, standIn).orElse(standIn);
    if ((number < 1 || number > most) && !issues.has(at(column))) {
      note(
          IssueCode.OUT_OF_RANGE,
          column,
          "The number " + number + " is outside 1 to " + most + ".",
          "Write a whole number from 1 to " + most + ".");
    }
    return number;
  }

  /** Notes that a cell is empty that must not be. */
  void missing(String column, String remedy) {
    note(IssueCode.MISSING, column, "The cell \"" + column + "\" is empty.", remedy);
  }

  /** Notes cells that cannot be filled in such a row. */
  void refuse(List<String> columns, String why) {
    for (String column : columns) {
      if (has(column)) {
        note(IssueCode.CONFLICTING_FIELDS, column, why, "Leave the cell empty.");
      }
    }
  }

  boolean flag(String column) {
    String text = stripped(column).toLowerCase(Locale.ROOT);
    if (!text.isEmpty() && !YES.contains(text) && !NO.contains(text)) {
      note(
          IssueCode.UNKNOWN_WORD,
          column,
          "\"" + column + "\" is neither true nor false.",
          "Write true or false; an empty cell is false.");
    }
    return YES.contains(text);
  }

  private String stripped(String column) {
    return cells.getOrDefault(column, "").strip();
  }

  <E extends Enum<E>> E word(String column, E[] words, E standIn) {
    return word(column, List.of(words), standIn).orElse(standIn);
  }

  /** One of the words of a column. */
  <E extends Enum<E>> Optional<E> word(String column, List<E> words, E standIn) {
    String text = stripped(column).toLowerCase(Locale.ROOT);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    for (E word : words) {
      if (wordOf(word).equals(text)) {
        return Optional.of(word);
      }
    }
    note(
        IssueCode.UNKNOWN_WORD,
        column,
        "\"" + column + "\" does not know this word.",
        "Use one of " + String.join(", ", words.stream().map(Row::wordOf).toList()) + ".");
    return Optional.of(standIn);
  }

  /** The word as it stands in a cell: {@code at-hand}. */
  static String wordOf(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  OptionalInt whole(String column, int standIn) {
    return has(column) ? OptionalInt.of(wholeOf(stripped(column), column, standIn)) : empty();
  }

  private static OptionalInt empty() {
    return OptionalInt.empty();
  }

  private int wholeOf(String text, String column, int standIn) {
    String digits = text.startsWith("-") ? text.substring(1) : text;
    if (digits.isEmpty() || !digits.chars().allMatch(c -> c >= '0' && c <= '9')) {
      note(
          IssueCode.WRONG_TYPE,
          column,
          "Here stands something else than a whole number.",
          "Write a whole number.");
      return standIn;
    }
    if (digits.length() > INT_DIGITS) {
      note(
          IssueCode.OUT_OF_RANGE,
          column,
          "The number is beyond every limit here.",
          "Write a whole number within the limits of the column.");
      return standIn;
    }
    return Integer.parseInt(text);
  }

  List<String> texts(String column) {
    return text(column).map(CellList::entries).orElse(List.of());
  }

  List<Integer> wholes(String column, int standIn) {
    List<Integer> numbers = new ArrayList<>();
    for (String entry : texts(column)) {
      numbers.add(wholeOf(entry, column, standIn));
      if (issues.has(at(column))) {
        // One note is enough for one cell.
        break;
      }
    }
    return numbers;
  }

  Optional<Mass> mass(String column, Mass standIn) {
    return quantity(column, Mass::parse, standIn, "a mass such as \"31 oz\"");
  }

  Optional<Volume> volume(String column) {
    return quantity(column, Volume::parse, VOLUME_STAND_IN, "a volume such as \"4 L\"");
  }

  Optional<Cost> cost(String column) {
    return quantity(
        column,
        text -> Cost.parse(withPoint(text)),
        new Cost("0", 0),
        "an amount such as \"180.00\"");
  }

  /** A fraction of body mass. */
  Optional<Fraction> fraction(String column, Fraction standIn) {
    return quantity(column, Row::fraction, standIn, "a number such as 0.20");
  }

  private static Parse<Fraction> fraction(String text) {
    String number = withPoint(text).strip();
    if (number.startsWith("-")) {
      return new Parse.Unreadable<>(Parse.Fault.NEGATIVE);
    }
    if (!number.matches("[0-9]+(\\.[0-9]+)?")) {
      return new Parse.Unreadable<>(Parse.Fault.NOT_A_NUMBER);
    }
    return number.length() > FRACTION_DIGITS
        ? new Parse.Unreadable<>(Parse.Fault.TOO_LONG)
        : Fraction.of(new BigDecimal(number));
  }

  /**
   * A spreadsheet may write 0,20 and 180,50. Neither can be meant as thousands: fractions are at
   * most one, and amounts have at most two decimals.
   */
  private static String withPoint(String text) {
    return text.strip().matches("0,[0-9]+|[0-9]+,[0-9]{1,2}") ? text.replace(',', '.') : text;
  }

  private <T> Optional<T> quantity(
      String column, Function<String, Parse<T>> parser, T standIn, String needed) {
    Optional<String> text = text(column);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Parse<T> parse = parser.apply(text.get());
    if (parse instanceof Parse.Read<T> read) {
      return Optional.of(read.value());
    }
    Parse.Fault fault = ((Parse.Unreadable<T>) parse).fault();
    IssueCode code = code(fault);
    String message =
        table.shows(column, text.get())
            ? "\"" + Issues.shortened(text.get()) + "\": " + fault.meaning() + "."
            : "The quantity cannot be used: " + fault.meaning() + ".";
    boolean unit = code == IssueCode.NO_UNIT || code == IssueCode.UNKNOWN_UNIT;
    String remedy = unit ? code.remedy() : "Write " + needed + ".";
    note(code, column, message, remedy);
    return Optional.of(standIn);
  }

  private static IssueCode code(Parse.Fault fault) {
    return switch (fault) {
      case EMPTY -> IssueCode.EMPTY_TEXT;
      case TOO_LONG -> IssueCode.TEXT_TOO_LONG;
      case NO_UNIT -> IssueCode.NO_UNIT;
      case UNKNOWN_UNIT -> IssueCode.UNKNOWN_UNIT;
      case NEGATIVE -> IssueCode.NEGATIVE;
      case TOO_LARGE -> IssueCode.OUT_OF_RANGE;
      case NOT_A_NUMBER, OUT_OF_ORDER, TOO_FINE -> IssueCode.NOT_A_QUANTITY;
    };
  }
}
