package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.trip.plan.Amount;
import dev.faircarry.trip.plan.Need;
import dev.faircarry.trip.plan.Offer;
import dev.faircarry.trip.plan.PlanLimits;
import dev.faircarry.trip.plan.Taking;
import java.util.List;
import java.util.Optional;

/** Reads the question what to take: needs, offers, budget. */
final class TakingReader {
  private TakingReader() {}

  static Taking read(Entry entry) {
    Taking taking =
        new Taking(
            PlanReader.each(entry, "needs", PlanLimits.NEEDS, (need, ids) -> need(need)),
            PlanReader.each(entry, "offers", PlanLimits.OFFERS, TakingReader::offer),
            Quantities.cost(entry, "budget"),
            entry.texts("keep", PlanLimits.OFFERS).orElse(List.of()));
    entry.done();
    return taking;
  }

  private static Need need(Entry entry) {
    Need need =
        new Need(
            entry.neededText("covers"),
            amount(entry, "atLeast").orElseGet(() -> new Amount.Count(0)),
            entry.whole("perParty", 0));
    if (!entry.has("atLeast") && !entry.has("perParty")) {
      entry.missing("atLeast", 0);
    }
    entry.done();
    return need;
  }

  /** A number of things, or a volume with its unit. */
  private static Optional<Amount> amount(Entry entry, String field) {
    Optional<JsonNode> value = entry.find(field);
    if (value.isPresent() && value.get().isTextual()) {
      return Quantities.volume(entry, field).map(Amount.Room::new);
    }
    return value.isEmpty()
        ? Optional.empty()
        : Optional.of(new Amount.Count(entry.whole(field, 1).orElse(1)));
  }

  private static Offer offer(Entry entry, Ids ids) {
    String id = ids.of(entry);
    Offer offer =
        new Offer(
            id,
            Names.of(entry, id),
            Quantities.neededMass(entry, "mass"),
            HikerReader.massFrom(entry),
            Quantities.volume(entry, "volume"),
            Quantities.cost(entry, "price"),
            entry.whole("available", 1).orElse(1),
            entry.text("owner"),
            entry.text("forHiker"),
            HikerReader.stow(entry),
            covers(entry, "covers"),
            covers(entry, "requires"),
            entry.texts("makesUnnecessary", PlanLimits.NAMES_PER_OFFER).orElse(List.of()),
            UseReader.contains(entry));
    entry.done();
    return offer;
  }

  private static List<Offer.Cover> covers(Entry entry, String field) {
    return PlanReader.each(
        entry,
        field,
        PlanLimits.NAMES_PER_OFFER,
        (cover, ids) -> {
          Offer.Cover read =
              new Offer.Cover(
                  cover.neededText("need"),
                  amount(cover, "amount").orElseGet(() -> new Amount.Count(1)));
          cover.done();
          return read;
        });
  }
}
