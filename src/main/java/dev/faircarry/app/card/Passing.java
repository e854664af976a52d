package dev.faircarry.app.card;

import dev.faircarry.split.Carry;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What changes hands before the group leaves, from where things are now to who carries them.
 *
 * @param from who has it now: its carrier in the earlier split, else its owner
 */
record Passing(PieceRef piece, int units, String from, String to, Card.Why why) {

  /**
   * Everything that changes hands, in the order of the trip. Units of one thing are
   * interchangeable: whoever has too many gives to whoever has too few, both in the order of the
   * trip.
   *
   * @param earlier the split agreed on before, if there was one; hikers it names may be gone
   */
  static List<Passing> of(Trip trip, Split split, Optional<Split> earlier) {
    List<Passing> all = new ArrayList<>();
    Map<PieceRef, Map<String, Integer>> wanted = holdings(split);
    Map<PieceRef, Map<String, Integer>> before =
        earlier.map(Passing::holdings).orElseGet(LinkedHashMap::new);
    for (SharedItem item : trip.shared()) {
      wanted.forEach(
          (piece, hands) -> {
            if (piece.item().equals(item.id())) {
              one(trip, item, piece, hands, before.getOrDefault(piece, Map.of()), all);
            }
          });
    }
    return all;
  }

  private static void one(
      Trip trip,
      SharedItem item,
      PieceRef piece,
      Map<String, Integer> wanted,
      Map<String, Integer> before,
      List<Passing> all) {
    Map<String, Integer> spare = new LinkedHashMap<>();
    before.forEach(
        (hiker, units) -> {
          int left = units - wanted.getOrDefault(hiker, 0);
          if (left > 0) {
            spare.put(hiker, left);
          }
        });
    for (Hiker to : trip.hikers()) {
      int lacks = wanted.getOrDefault(to.id(), 0) - before.getOrDefault(to.id(), 0);
      for (Map.Entry<String, Integer> from : spare.entrySet()) {
        int moved = Math.min(Math.max(lacks, 0), from.getValue());
        if (moved > 0) {
          all.add(new Passing(piece, moved, from.getKey(), to.id(), Card.Why.CARRIED_BEFORE));
          from.setValue(from.getValue() - moved);
          lacks -= moved;
        }
      }
      Optional<String> owner = item.owner().filter(id -> !id.equals(to.id()));
      if (lacks > 0 && owner.isPresent()) {
        all.add(new Passing(piece, lacks, owner.get(), to.id(), Card.Why.OWNED));
      }
    }
  }

  private static Map<PieceRef, Map<String, Integer>> holdings(Split split) {
    Map<PieceRef, Map<String, Integer>> all = new LinkedHashMap<>();
    for (Carry carry : split.carries()) {
      all.computeIfAbsent(carry.piece(), key -> new LinkedHashMap<>())
          .merge(carry.hiker(), carry.units(), Integer::sum);
    }
    return all;
  }
}
