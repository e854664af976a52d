package dev.faircarry.solve;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Use;
import dev.faircarry.unit.Volume;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Cuts shared items into what is handed out: whole items, parts, and single units. */
final class Cutting {
  /**
   * A content with what the block needs to know of it.
   *
   * @param volume milliliters: inside a container if it goes into one, else in the pack
   * @param kind of the containers it goes into, or -1
   * @param containerKind of the container it is, or -1
   * @param innerVolume milliliters it has room for
   */
  record Cut(Block.Content content, long volume, int kind, int containerKind, long innerVolume) {}

  private final ModelBuilder b;

  private Cutting(ModelBuilder builder) {
    b = builder;
  }

  /** All contents in the trip's order; also counts the parts of each item. */
  static List<Cut> of(ModelBuilder builder) {
    Cutting cutting = new Cutting(builder);
    List<Cut> cuts = new ArrayList<>();
    List<SharedItem> items = builder.trip.shared();
    for (int k = 0; k < items.size(); k++) {
      cuts.addAll(cutting.cut(k, items.get(k)));
    }
    builder.leftOut.ifPresent(piece -> cuts.removeIf(cut -> cut.content().ref().equals(piece)));
    return cuts;
  }

  private List<Cut> cut(int k, SharedItem item) {
    return item.form()
        .match(
            new Form.Cases<List<Cut>>() {
              @Override
              public List<Cut> whole(Form.Whole form) {
                Optional<Use> use = form.use().map(u -> (Use) u);
                int inner = form.contains().map(c -> b.kind(c.kind())).orElse(-1);
                long innerVolume = form.contains().map(c -> c.volume().milliliters()).orElse(0L);
                return List.of(
                    content(
                        k,
                        item,
                        PieceRef.item(item.id()),
                        false,
                        form.mass().milligrams(),
                        use,
                        0,
                        form.volume(),
                        form.stow(),
                        inner,
                        innerVolume));
              }

              @Override
              public List<Cut> parts(Form.Parts form) {
                b.partsOfItem[k] = form.parts().size();
                return form.parts().stream().map(part -> part(k, item, part)).toList();
              }

              @Override
              public List<Cut> counted(Form.Counted form) {
                return units(k, item, form);
              }
            });
  }

  private Cut part(int k, SharedItem item, Form.Part part) {
    return content(
        k,
        item,
        PieceRef.part(item.id(), part.id()),
        true,
        part.mass().milligrams(),
        Optional.empty(),
        0,
        part.volume(),
        part.stow(),
        -1,
        0);
  }

  private List<Cut> units(int k, SharedItem item, Form.Counted form) {
    List<Cut> units = new ArrayList<>();
    int[] perDay = new int[b.days];
    int count;
    if (form.quantity() instanceof Form.Quantity.Fixed fixed) {
      count = fixed.count();
    } else {
      int each = ((Form.Quantity.PerPerson) form.quantity()).countPerDay();
      count = 0;
      for (int d = 0; d < b.days; d++) {
        perDay[d] = each * people(d);
        count += perDay[d];
      }
      if (!item.onDays().isEmpty()) {
        count = perDay[item.onDays().get(0) - 1];
      }
    }
    if (form.use().isPresent() && form.use().get() instanceof Use.UnitsPerDay use) {
      if (use.perDay() instanceof Use.PerDay.Same same) {
        Arrays.fill(perDay, same.units());
      } else if (use.perDay() instanceof Use.PerDay.Listed listed) {
        Arrays.setAll(perDay, d -> listed.units().get(d));
      }
      int left = count;
      for (int d = 0; d < b.days; d++) {
        int used = Math.min(perDay[d], left);
        left -= used;
        addUnits(k, item, form, used, d + 1, units);
      }
      addUnits(k, item, form, left, Block.Content.NEVER, units);
    } else {
      addUnits(k, item, form, count, 0, units);
    }
    return units;
  }

  private int people(int day) {
    int sum = 0;
    for (int last : b.lastDay) {
      sum += day <= last ? 1 : 0;
    }
    return sum;
  }

  private void addUnits(
      int k, SharedItem item, Form.Counted form, int count, int openDay, List<Cut> units) {
    for (int u = 0; u < count; u++) {
      units.add(
          content(
              k,
              item,
              PieceRef.item(item.id()),
              false,
              form.unitMass().milligrams(),
              form.use(),
              openDay,
              form.unitVolume(),
              form.stow(),
              -1,
              0));
    }
  }

  /**
   * @param openDay 0 for what is not used by units, else the day (from 1) on which the unit is used
   */
  private Cut content(
      int k,
      SharedItem item,
      PieceRef ref,
      boolean isPart,
      long unitMass,
      Optional<Use> use,
      int openDay,
      Optional<Volume> volume,
      Stow stow,
      int containerKind,
      long innerVolume) {
    long[] mass = new long[b.days];
    boolean[] there = new boolean[b.days];
    int neededUntil = 0;
    for (int d = 0; d < b.days; d++) {
      boolean used = openDay > 0 && d + 1 > openDay;
      there[d] = item.thereOn(d + 1) && !used;
      if (used) {
        mass[d] = ((Use.UnitsPerDay) use.orElseThrow()).leaves().milligrams();
      } else if (there[d]) {
        mass[d] = unitMass;
        if (use.isPresent() && use.get() instanceof Use.Evenly evenly) {
          mass[d] = ModelBuilder.usedEvenly(unitMass, evenly.leaves().milligrams(), d, b.days);
        }
      }
      if (there[d]) {
        neededUntil = d;
      }
    }
    int kind = item.goesInto().map(b::kind).orElse(-1);
    // What goes into a container takes no room in the pack, whether or not containers are asked
    // for.
    boolean inPack = stow != Stow.OUTSIDE && item.goesInto().isEmpty();
    long taken = inPack ? volume.map(Volume::milliliters).orElse(0L) : 0;
    if (kind >= 0) {
      taken = volume.map(Volume::milliliters).orElse(0L);
    }
    Block.Content content =
        new Block.Content(
            ref, k, isPart, openDay == 0 ? Block.Content.NEVER : openDay, mass, there, neededUntil);
    return new Cut(content, taken, kind, containerKind, innerVolume);
  }

  /** Whether a reference of a rule names the content. */
  static boolean names(PieceRef reference, Block.Content content) {
    return reference.part().isPresent()
        ? reference.equals(content.ref())
        : reference.item().equals(content.ref().item());
  }

  /** Whether one of the references names the content. */
  static boolean anyNames(List<PieceRef> references, Block.Content content) {
    return references.stream().anyMatch(ref -> names(ref, content));
  }
}
