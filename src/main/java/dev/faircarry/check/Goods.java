package dev.faircarry.check;

import dev.faircarry.trip.Contains;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Use;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that is handed out: whole items, parts, and counted items with their number of units
 * and use.
 */
final class Goods {
  final List<Good> all = new ArrayList<>();
  private final Map<PieceRef, Integer> indexOf = new HashMap<>();
  private final Map<String, BitSet> ofItem = new HashMap<>();
  private final Map<String, List<Good>> partsOf = new HashMap<>();

  /**
   * One kind of thing that is handed out.
   *
   * @param count units there are; 1 for a whole item or a part
   * @param partsOfItem how many parts its item has; 0 if it is no part
   * @param usedOn units used on each day, day 1 first; empty for what is not used by units
   * @param leavesMilligrams what a used unit leaves, or what is left of what is used evenly
   */
  record Good(
      int index,
      SharedItem item,
      PieceRef ref,
      int count,
      int partsOfItem,
      long unitMilligrams,
      long unitMilliliters,
      Stow stow,
      boolean evenly,
      List<Integer> usedOn,
      long leavesMilligrams,
      Optional<Contains> contains,
      int days) {

    boolean thereOn(int day) {
      return item.thereOn(day);
    }

    /** Whether an unused unit matters on this morning or a later one. */
    boolean neededFrom(int day) {
      for (int d = day; d <= days; d++) {
        if (thereOn(d)) {
          return true;
        }
      }
      return false;
    }

    boolean usedByUnits() {
      return !usedOn.isEmpty();
    }

    /** Milligrams of an unused unit on a morning. */
    long massOn(int day) {
      if (!thereOn(day)) {
        return 0;
      }
      if (!evenly) {
        return unitMilligrams;
      }
      return unitMilligrams
          - Math.floorDiv(
              Math.multiplyExact(unitMilligrams - leavesMilligrams, (long) (day - 1)), days);
    }

    /** Units used up before a morning. */
    int usedBefore(int day) {
      int sum = 0;
      for (int d = 1; d < day && usedByUnits(); d++) {
        sum += usedOn.get(d - 1);
      }
      return sum;
    }

    boolean covers(String need) {
      return item.covers().contains(need);
    }
  }

  Goods(Itinerary itinerary) {
    for (SharedItem item : itinerary.trip.shared()) {
      item.form().match(new Adding(itinerary, item));
    }
  }

  Optional<Good> find(PieceRef ref) {
    return Optional.ofNullable(indexOf.get(ref)).map(all::get);
  }

  /** The parts of an item, or the one thing that it is. */
  List<Good> ofItem(String id) {
    return partsOf.computeIfAbsent(id, item -> named(List.of(PieceRef.item(item))));
  }

  /**
   * Everything a reference of a rule names: an item's bare name stands for all its parts and units.
   */
  List<Good> named(List<PieceRef> references) {
    BitSet named = new BitSet();
    for (PieceRef reference : references) {
      if (reference.part().isEmpty()) {
        named.or(ofItem.getOrDefault(reference.item(), new BitSet()));
      } else {
        find(reference).ifPresent(good -> named.set(good.index()));
      }
    }
    return named.stream().mapToObj(all::get).toList();
  }

  private final class Adding implements Form.Cases<Boolean> {
    private final Itinerary itinerary;
    private final SharedItem item;

    Adding(Itinerary itinerary, SharedItem item) {
      this.itinerary = itinerary;
      this.item = item;
    }

    private boolean add(
        PieceRef ref,
        int count,
        int parts,
        long mass,
        long volume,
        Stow stow,
        Optional<Use> use,
        List<Integer> usedOn,
        Optional<Contains> contains) {
      long leaves =
          use.map(
                  u ->
                      u instanceof Use.Evenly evenly
                          ? evenly.leaves().milligrams()
                          : ((Use.UnitsPerDay) u).leaves().milligrams())
              .orElse(0L);
      boolean evenly = use.isPresent() && use.get() instanceof Use.Evenly;
      indexOf.put(ref, all.size());
      ofItem.computeIfAbsent(item.id(), id -> new BitSet()).set(all.size());
      return all.add(
          new Good(
              all.size(),
              item,
              ref,
              count,
              parts,
              mass,
              volume,
              stow,
              evenly,
              usedOn,
              leaves,
              contains,
              itinerary.days));
    }

    @Override
    public Boolean whole(Form.Whole form) {
      return add(
          PieceRef.item(item.id()),
          1,
          0,
          form.mass().milligrams(),
          form.volume().map(v -> v.milliliters()).orElse(0L),
          form.stow(),
          form.use().map(u -> (Use) u),
          List.of(),
          form.contains());
    }

    @Override
    public Boolean parts(Form.Parts form) {
      for (Form.Part part : form.parts()) {
        add(
            PieceRef.part(item.id(), part.id()),
            1,
            form.parts().size(),
            part.mass().milligrams(),
            part.volume().map(v -> v.milliliters()).orElse(0L),
            part.stow(),
            Optional.empty(),
            List.of(),
            Optional.empty());
      }
      return true;
    }

    @Override
    public Boolean counted(Form.Counted form) {
      int count = count(form.quantity());
      List<Integer> usedOn = new ArrayList<>();
      if (form.use().isPresent() && form.use().get() instanceof Use.UnitsPerDay use) {
        int left = count;
        for (int day = 1; day <= itinerary.days; day++) {
          int used = Math.min(left, wanted(use.perDay(), form.quantity(), day));
          usedOn.add(used);
          left -= used;
        }
      }
      return add(
          PieceRef.item(item.id()),
          count,
          0,
          form.unitMass().milligrams(),
          form.unitVolume().map(v -> v.milliliters()).orElse(0L),
          form.stow(),
          form.use(),
          usedOn,
          Optional.empty());
    }

    private int count(Form.Quantity quantity) {
      if (quantity instanceof Form.Quantity.Fixed fixed) {
        return fixed.count();
      }
      int each = ((Form.Quantity.PerPerson) quantity).countPerDay();
      if (!item.onDays().isEmpty()) {
        return each * itinerary.peopleOn(item.onDays().get(0));
      }
      int sum = 0;
      for (int day = 1; day <= itinerary.days; day++) {
        sum += each * itinerary.peopleOn(day);
      }
      return sum;
    }

    private int wanted(Use.PerDay perDay, Form.Quantity quantity, int day) {
      if (perDay instanceof Use.PerDay.Same same) {
        return same.units();
      }
      if (perDay instanceof Use.PerDay.Listed listed) {
        return listed.units().get(day - 1);
      }
      return quantity instanceof Form.Quantity.PerPerson perPerson
          ? perPerson.countPerDay() * itinerary.peopleOn(day)
          : 0;
    }
  }
}
