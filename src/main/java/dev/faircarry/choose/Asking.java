package dev.faircarry.choose;

import dev.faircarry.choose.Candidate.Kind;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.plan.Need;
import dev.faircarry.trip.plan.Offer;
import dev.faircarry.trip.plan.Plan;
import dev.faircarry.trip.plan.Taking;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Turns a trip and its plan into the question what to take.
 *
 * <p>A thing of the trip may stay when it meets a need that is asked for and is neither kept, nor a
 * luxury, nor worn, nor used up; or when an offer makes it unnecessary. Everything else comes in
 * any case and is no part of the question, but what it meets counts. Needs are the defaults, those
 * of the plan in place of them, and what the trip's own rules ask for each party.
 */
public final class Asking {
  private final Trip trip;
  private final Taking taking;
  private final Map<String, Required> needs = new LinkedHashMap<>();
  private final Set<String> replaced = new HashSet<>();

  private Asking(Trip trip) {
    this.trip = trip;
    this.taking = trip.plan().flatMap(Plan::taking).orElse(Taking.EMPTY);
  }

  /** The question of a trip that has no issues. */
  public static Question of(Trip trip) {
    return new Asking(trip).question();
  }

  private Question question() {
    gatherNeeds();
    taking.offers().forEach(o -> replaced.addAll(o.makesUnnecessary()));
    List<Candidate> candidates = new ArrayList<>();
    for (SharedItem item : trip.shared()) {
      add(candidates, shared(item));
    }
    for (Hiker hiker : trip.hikers()) {
      for (KitItem item : hiker.kit()) {
        add(candidates, kit(hiker, item));
      }
    }
    for (Offer offer : taking.offers()) {
      candidates.add(offer(offer));
    }
    OptionalLong budget =
        taking.budget().isPresent()
            ? OptionalLong.of(taking.budget().orElseThrow().hundredths())
            : OptionalLong.empty();
    return new Question(candidates, new ArrayList<>(needs.values()), budget);
  }

  /** What comes in any case and meets nothing does not matter here. */
  private static void add(List<Candidate> candidates, Candidate candidate) {
    if (candidate.least() == 0 || !candidate.covers().isEmpty()) {
      candidates.add(candidate);
    }
  }

  private void gatherNeeds() {
    Set<String> parties = new TreeSet<>();
    trip.hikers().forEach(h -> parties.add(Things.party(h)));
    for (DefaultNeeds.Default d : DefaultNeeds.of(trip)) {
      needs.put(
          d.need(),
          new Required(
              d.need(),
              d.atLeast(),
              d.room(),
              all(parties, d.perParty()),
              "common practice: " + d.reason()));
    }
    for (Need need : taking.needs()) {
      needs.put(
          need.covers(),
          new Required(
              need.covers(),
              need.atLeast().size(),
              need.atLeast().isRoom(),
              all(parties, need.perParty().orElse(0)),
              "stated in the plan"));
    }
    for (Rule rule : trip.rules()) {
      if (rule instanceof Rule.PartyHas partyHas) {
        Set<String> named =
            partyHas.parties().isEmpty() ? parties : new TreeSet<>(partyHas.parties());
        needs.merge(
            partyHas.covers(),
            new Required(
                partyHas.covers(),
                0,
                false,
                all(named, partyHas.atLeast()),
                "rule " + partyHas.id()),
            Asking::both);
      }
    }
    for (Offer offer : taking.offers()) {
      for (Offer.Cover cover : offer.requires()) {
        needs.putIfAbsent(
            cover.need(),
            new Required(
                cover.need(), 0, cover.amount().isRoom(), Map.of(), "something taken asks for it"));
      }
    }
  }

  private static Map<String, Integer> all(Set<String> parties, int each) {
    Map<String, Integer> perParty = new TreeMap<>();
    if (each > 0) {
      parties.forEach(p -> perParty.put(p, each));
    }
    return perParty;
  }

  private static Required both(Required one, Required other) {
    Map<String, Integer> perParty = new TreeMap<>(one.perParty());
    other.perParty().forEach((party, n) -> perParty.merge(party, n, Math::max));
    return new Required(
        one.need(),
        Math.max(one.atLeast(), other.atLeast()),
        one.room(),
        perParty,
        one.reason() + "; " + other.reason());
  }

  private Candidate shared(SharedItem item) {
    Map<String, Long> covers = new TreeMap<>();
    for (Required need : needs.values()) {
      long amount = Things.meets(trip, item, need.need(), need.room());
      if (amount > 0) {
        covers.put(need.need(), amount);
      }
    }
    boolean stays =
        Things.usedUp(item) || !item.onDays().isEmpty() || taking.keep().contains(item.id());
    return existing(
        item.id(),
        Kind.SHARED,
        item.name(),
        Things.massMilligrams(trip, item),
        Optional.empty(),
        covers,
        stays);
  }

  private Candidate kit(Hiker hiker, KitItem item) {
    String ref = hiker.id() + "/" + item.id();
    Map<String, Long> covers = new TreeMap<>();
    for (Required need : needs.values()) {
      long amount = Things.meets(item, need.need(), need.room());
      if (amount > 0) {
        covers.put(need.need(), amount);
      }
    }
    boolean stays =
        item.worn() || item.luxury() || item.use().isPresent() || taking.keep().contains(ref);
    return existing(
        ref,
        Kind.KIT,
        item.name(),
        item.mass().milligrams(),
        Optional.of(Things.party(hiker)),
        covers,
        stays);
  }

  private Candidate existing(
      String ref,
      Kind kind,
      String name,
      long massMilligrams,
      Optional<String> party,
      Map<String, Long> covers,
      boolean stays) {
    boolean free =
        !stays && covers.keySet().stream().anyMatch(n -> needs.containsKey(n) && asks(n));
    boolean mayStay = !stays && (free || replaced.contains(ref));
    return new Candidate(
        ref,
        kind,
        name,
        massMilligrams,
        0,
        mayStay ? 0 : 1,
        1,
        party,
        covers,
        Map.of(),
        List.of(),
        free);
  }

  private boolean asks(String need) {
    Required required = needs.get(need);
    return required != null && required.asks();
  }

  private Candidate offer(Offer offer) {
    Optional<String> party =
        offer.forHiker().flatMap(id -> Things.hiker(trip, id)).map(Things::party);
    return new Candidate(
        offer.id(),
        Kind.OFFER,
        offer.name(),
        offer.mass().milligrams(),
        offer.price().map(p -> p.hundredths()).orElse(0L),
        0,
        offer.available(),
        party,
        amounts(offer.covers()),
        amounts(offer.requires()),
        offer.makesUnnecessary(),
        true);
  }

  private static Map<String, Long> amounts(List<Offer.Cover> covers) {
    Map<String, Long> amounts = new TreeMap<>();
    for (Offer.Cover cover : covers) {
      if (cover.amount().size() > 0) {
        amounts.merge(cover.need(), cover.amount().size(), Long::sum);
      }
    }
    return amounts;
  }
}
