package dev.faircarry.app.card;

import dev.faircarry.access.Sight;
import dev.faircarry.app.Cautions;
import dev.faircarry.app.MassUnits;
import dev.faircarry.app.TripNames;
import dev.faircarry.check.Morning;
import dev.faircarry.split.CampHandover;
import dev.faircarry.split.Handover;
import dev.faircarry.split.Opened;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Trip;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** A card as plain text, short enough for a message. */
public final class CardText {
  private static final long NANOGRAMS_PER_MILLIGRAM = 1_000_000L;

  private final Trip trip;
  private final TripNames names;
  private final MassUnits units;
  private final Sight sight;
  private final StringBuilder out = new StringBuilder();

  /**
   * @param sight whose ratios the reader may not learn
   */
  public CardText(Trip trip, MassUnits units, Sight sight) {
    this.trip = trip;
    this.names = new TripNames(trip);
    this.units = units;
    this.sight = sight;
  }

  /**
   * The text of a card.
   *
   * @param absences what to do if one of the others does not come; possibly none
   * @param stale whether the trip has changed since the split was made
   */
  public String of(Card card, List<Absence> absences, boolean stale) {
    out.setLength(0);
    String me = card.hiker().id();
    line(card.hiker().name() + ": what you carry");
    line(trip.name() + ", " + count(trip.days(), "day"));
    if (stale) {
      line("The trip has changed since; ask for a new card before you leave.");
    }
    things(card);
    section("Give to others now", card.gives().stream().map(this::gives).toList());
    section("At camp", card.atCamp().stream().map(h -> atCamp(h, me)).toList());
    section(
        "Your load each morning",
        card.loads().mornings().stream().map(m -> load(m, card)).toList());
    section("Whose bag is opened when", openings(card.openings(), me));
    section("If somebody does not come", absences(absences, me));
    section("Your own kit", card.hiker().kit().stream().map(this::kit).toList());
    section("Mind", Cautions.TEXT);
    return out.toString();
  }

  private void things(Card card) {
    List<String> lines =
        card.things().stream().map(thing -> thing(thing, card.hiker().id())).toList();
    section("Carry of what is shared", lines.isEmpty() ? List.of("nothing") : lines);
  }

  private String thing(Card.Thing thing, String me) {
    StringBuilder line = new StringBuilder(units(thing.units(), thing.piece()));
    line.append(", ")
        .append(units.text(thing.milligrams()))
        .append(", ")
        .append(stow(thing.stow()));
    thing.into().forEach(name -> line.append(", in “").append(name).append('”'));
    if (!thing.days().isEmpty()) {
      line.append(", on day ").append(numbers(thing.days()));
    }
    for (Card.From from : thing.from()) {
      line.append("; ");
      if (from.units() != thing.units()) {
        line.append(from.units()).append(" of them ");
      }
      line.append("from ").append(names.hiker(from.hiker()));
    }
    thing
        .owner()
        .ifPresent(
            owner ->
                line.append(owner.equals(me) ? "; yours" : "; goes back to " + names.hiker(owner)));
    return line.toString();
  }

  private String gives(Card.Gives gives) {
    return units(gives.units(), gives.piece()) + " to " + names.hiker(gives.to());
  }

  private String atCamp(CampHandover handover, String me) {
    String thing = units(handover.units(), handover.piece());
    return "end of day "
        + handover.afterDay()
        + ": "
        + (handover.from().equals(me)
            ? "give " + thing + " to " + names.hiker(handover.to())
            : "take " + thing + " from " + names.hiker(handover.from()));
  }

  private String load(Morning morning, Card card) {
    String line = "day " + morning.day() + ": " + units.text(morning.loadMilligrams());
    if (!sight.hides(card.hiker().id())) {
      return line + ", " + percent(morning, card) + " % of your target";
    }
    boolean within =
        Math.multiplyExact(morning.countedMilligrams(), NANOGRAMS_PER_MILLIGRAM)
            <= card.loads().targetNanograms();
    return line + (within ? ", within target" : ", above target");
  }

  /** Rounded up: what is above never looks on target. */
  private static String percent(Morning morning, Card card) {
    return BigDecimal.valueOf(morning.countedMilligrams())
        .movePointRight(8)
        .divide(BigDecimal.valueOf(card.loads().targetNanograms()), 0, RoundingMode.CEILING)
        .toPlainString();
  }

  private List<String> openings(List<Opened> opened, String me) {
    Map<String, List<String>> byDay = new LinkedHashMap<>();
    for (Opened o : opened) {
      String whose = o.hiker().equals(me) ? "you" : names.hiker(o.hiker());
      byDay
          .computeIfAbsent(
              "day " + o.day() + ", " + names.piece(PieceRef.item(o.item())) + ": ",
              key -> new ArrayList<>())
          .add(o.units() + " from " + whose);
    }
    return byDay.entrySet().stream()
        .map(e -> e.getKey() + String.join(", ", e.getValue()))
        .toList();
  }

  private List<String> absences(List<Absence> absences, String me) {
    List<String> lines = new ArrayList<>();
    for (Absence absence : absences) {
      if (absence.hiker().equals(me)) {
        continue;
      }
      lines.add("without " + names.hiker(absence.hiker()) + ": " + without(absence, me));
    }
    return lines;
  }

  private String without(Absence absence, String me) {
    return switch (absence.outcome()) {
      case IMPOSSIBLE -> "the rules cannot all hold; talk it over";
      case UNDECIDED -> "not worked out in time; ask the service";
      case UNFIT -> "the trip as it stands needs them; talk it over";
      case HANDOVERS -> {
        String mine =
            absence.handovers().stream()
                .filter(h -> h.from().equals(me) || h.to().equals(me))
                .map(h -> handover(h, absence.hiker(), me))
                .collect(Collectors.joining("; "));
        yield mine.isEmpty() ? "nothing changes for you" : mine;
      }
    };
  }

  private String handover(Handover handover, String absent, String me) {
    String thing = units(handover.units(), handover.piece());
    if (handover.from().equals(me)) {
      return "give " + thing + " to " + names.hiker(handover.to());
    }
    return "take "
        + thing
        + (handover.from().equals(absent) ? "" : " from " + names.hiker(handover.from()));
  }

  private String kit(KitItem item) {
    return item.name()
        + ", "
        + units.text(item.mass().milligrams())
        + ", "
        + (item.worn() ? "worn" : stow(item.stow()));
  }

  private String units(int number, PieceRef piece) {
    return (number == 1 ? "" : number + " × ") + names.piece(piece);
  }

  private static String stow(Stow stow) {
    return stow.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String numbers(List<Integer> days) {
    return days.stream().map(String::valueOf).collect(Collectors.joining(", "));
  }

  private static String count(int number, String one) {
    return number + " " + one + (number == 1 ? "" : "s");
  }

  private void section(String title, List<String> lines) {
    if (lines.isEmpty()) {
      return;
    }
    line("");
    line(title);
    lines.forEach(each -> line("- " + each));
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  /** Several cards under each other. */
  public static String together(List<String> cards) {
    return String.join("\n\n", cards);
  }
}
