package dev.faircarry.check;

import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Stow;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Whether what hikers hold goes into packs and containers, and how many pieces they took on. */
final class RoomFindings {
  private final Itinerary itinerary;
  private final Goods goods;
  private final Holdings holdings;
  private final FindingList findings;

  RoomFindings(Itinerary itinerary, Goods goods, Holdings holdings, FindingList findings) {
    this.itinerary = itinerary;
    this.goods = goods;
    this.holdings = holdings;
    this.findings = findings;
  }

  void check() {
    for (int i = 0; i < itinerary.hikers.size(); i++) {
      room(i);
      containers(i);
      pieces(i);
    }
  }

  private static long ownMilliliters(Hiker hiker) {
    return hiker.kit().stream()
        .filter(item -> !item.worn() && item.stow() != Stow.OUTSIDE)
        .mapToLong(item -> item.volume().map(v -> v.milliliters()).orElse(0L))
        .sum();
  }

  private void room(int i) {
    Hiker hiker = itinerary.hikers.get(i);
    if (hiker.pack().flatMap(p -> p.volume()).isEmpty()) {
      return;
    }
    long pack = hiker.pack().flatMap(p -> p.volume()).orElseThrow().milliliters();
    long own = ownMilliliters(hiker);
    if (own > pack) {
      findings.add(
          new Finding(
              FindingCode.OWN_KIT_OVERFILLS,
              Severity.CAUTION,
              List.of(hiker.id()),
              List.of(),
              List.of(),
              List.of(),
              hiker.name() + "’s own kit takes " + own + " mL of a pack of " + pack + " mL.",
              "Leave something at home, stow something outside, or take a larger pack."));
    }
    long room = Math.max(0, pack - own);
    List<Integer> days = new ArrayList<>();
    long most = 0;
    for (int day = 1; day <= itinerary.lastDay(i); day++) {
      long taken = 0;
      for (Goods.Good good : goods.all) {
        int held = holdings.held(good, day, i);
        if (held > 0
            && good.stow() != Stow.OUTSIDE
            && good.item().goesInto().isEmpty()
            && good.thereOn(day)) {
          taken += held * good.unitMilliliters();
        }
      }
      if (taken > room) {
        days.add(day);
        most = Math.max(most, taken);
      }
    }
    if (!days.isEmpty()) {
      findings.stop(
          FindingCode.NO_ROOM,
          List.of(hiker.id()),
          List.of(),
          days,
          hiker.name()
              + "’s shared pieces take "
              + most
              + " mL "
              + Words.days(days)
              + "; there is room for "
              + room
              + " mL.",
          "Give something bulky to somebody with room.");
    }
  }

  private void containers(int i) {
    Map<String, List<Goods.Good>> byKind = new LinkedHashMap<>();
    for (Goods.Good good : goods.all) {
      good.item()
          .goesInto()
          .ifPresent(kind -> byKind.computeIfAbsent(kind, k -> new ArrayList<>()).add(good));
    }
    byKind.forEach((kind, contents) -> container(i, kind, contents));
  }

  private void container(int i, String kind, List<Goods.Good> contents) {
    List<Integer> days = new ArrayList<>();
    List<PieceRef> pieces = new ArrayList<>();
    long missing = 0;
    boolean holdsSome = false;
    for (int day = 1; day <= itinerary.lastDay(i); day++) {
      long taken = 0;
      boolean any = false;
      for (Goods.Good good : contents) {
        if (good.thereOn(day) && holdings.held(good, day, i) > 0) {
          any = true;
          taken += holdings.held(good, day, i) * good.unitMilliliters();
        }
      }
      long inner = 0;
      boolean has = false;
      for (KitItem item : itinerary.hikers.get(i).kit()) {
        if (item.contains().filter(c -> c.kind().equals(kind)).isPresent()) {
          has = true;
          inner += item.contains().orElseThrow().volume().milliliters();
        }
      }
      for (Goods.Good good : goods.all) {
        boolean fits = good.contains().filter(c -> c.kind().equals(kind)).isPresent();
        if (fits && good.thereOn(day) && holdings.held(good, day, i) > 0) {
          has = true;
          inner +=
              good.contains().orElseThrow().volume().milliliters() * holdings.held(good, day, i);
        }
      }
      if (any && (!has || taken > inner)) {
        days.add(day);
        holdsSome |= has;
        missing = Math.max(missing, taken - inner);
        for (Goods.Good good : contents) {
          if (holdings.held(good, day, i) > 0 && !pieces.contains(good.ref())) {
            pieces.add(good.ref());
          }
        }
      }
    }
    if (!days.isEmpty()) {
      findings.stop(
          FindingCode.NO_CONTAINER,
          List.of(itinerary.hikers.get(i).id()),
          pieces,
          days,
          itinerary.name(i)
              + " carries things that go into a container of kind “"
              + kind
              + "” "
              + Words.days(days)
              + ", "
              + (holdsSome ? missing + " mL more than fit into the ones held." : "and holds none."),
          "Carry a container with them, or give them to somebody who has one.");
    }
  }

  private void pieces(int i) {
    Hiker hiker = itinerary.hikers.get(i);
    if (hiker.maxPieces().isEmpty()) {
      return;
    }
    int most = hiker.maxPieces().getAsInt();
    long count = 0;
    for (Goods.Good good : goods.all) {
      count += holdings.held(good, 1, i);
    }
    if (count > most) {
      findings.stop(
          FindingCode.TOO_MANY_PIECES,
          List.of(hiker.id()),
          List.of(),
          hiker.name()
              + " takes on "
              + (count == 1 ? "1 piece" : count + " pieces")
              + " at departure; the limit is "
              + most
              + ".",
          "Give some to somebody else.");
    }
  }
}
