package dev.faircarry.oracle;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Opened;
import dev.faircarry.split.Split;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Policy;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.Stow;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A trip in which nobody leaves early, for CP-SAT: units of a counted item as one integer for each
 * hiker, the opening plan as integers by day and hiker, hard caps, and a step for each
 * hiker-morning.
 */
final class CpSatModel {
  final CpModel cp = new CpModel();
  private final PlainTrip plain;
  private final int hikers;
  private final int days;

  /** Units a hiker takes at departure, by thing and hiker. */
  final IntVar[][] takes;

  /** Units used on a day from a hiker's pack, by thing, day and hiker; null where none are used. */
  private final IntVar[][][] opens;

  /** Steps, hiker by hiker, morning by morning. */
  final List<IntVar> steps = new ArrayList<>();

  /**
   * @param highest no step may be above this
   */
  CpSatModel(PlainTrip plain, long highest) {
    this.plain = plain;
    hikers = plain.hikers();
    days = plain.trip.days();
    takes = new IntVar[plain.things.size()][hikers];
    opens = new IntVar[plain.things.size()][days + 1][];
    for (int i = 0; i < hikers; i++) {
      if (plain.lastDay(i) < days) {
        throw new IllegalArgumentException("nobody may leave early here");
      }
    }
    things();
    for (int i = 0; i < hikers; i++) {
      for (int day = 1; day <= days; day++) {
        load(i, day, highest);
      }
      limits(i);
    }
    plain.trip.rules().forEach(this::rule);
  }

  private void things() {
    for (int t = 0; t < takes.length; t++) {
      Thing thing = plain.things.get(t);
      for (int i = 0; i < hikers; i++) {
        takes[t][i] = cp.newIntVar(0, thing.units(), "x");
      }
      cp.addEquality(LinearExpr.sum(takes[t]), thing.units());
      for (int day = 1; day <= days && thing.usedByUnits(); day++) {
        opens[t][day] = new IntVar[hikers];
        for (int i = 0; i < hikers; i++) {
          opens[t][day][i] = cp.newIntVar(0, thing.usedOnDay(day), "o");
        }
        cp.addEquality(LinearExpr.sum(opens[t][day]), thing.usedOnDay(day));
      }
      for (int i = 0; i < hikers && thing.usedByUnits(); i++) {
        cp.addGreaterOrEqual(unused(t, i, days + 1), 0);
      }
      minors(thing, t);
    }
  }

  private void minors(Thing thing, int t) {
    Set<String> covers = Set.copyOf(thing.item().covers());
    boolean hot = covers.contains("flame") || covers.contains("fuel");
    for (int i = 0; i < hikers; i++) {
      if (hot && plain.hiker(i).minor() && !plain.trip.policy().minorsMayCarryFlameAndFuel()) {
        cp.addEquality(takes[t][i], 0);
      }
    }
  }

  /** Unused units on a morning; {@code days + 1} for after the last day. */
  private LinearArgument unused(int t, int i, int day) {
    LinearExprBuilder sum = LinearExpr.newBuilder().add(takes[t][i]);
    for (int d = 1; d < day && plain.things.get(t).usedByUnits(); d++) {
      sum.addTerm(opens[t][d][i], -1);
    }
    return sum.build();
  }

  /** Shared milligrams times a factor, plus a constant. */
  private LinearExpr shared(int i, int day, long divisor, long own) {
    LinearExprBuilder sum = LinearExpr.newBuilder().add(own / divisor);
    for (int t = 0; t < takes.length; t++) {
      Thing thing = plain.things.get(t);
      long mass = thing.thereOn(day) ? thing.milligrams(day) : 0;
      sum.addTerm(takes[t][i], mass / divisor);
      for (int d = 1; d < day && thing.usedByUnits(); d++) {
        sum.addTerm(opens[t][d][i], (thing.leavesMilligrams() - mass) / divisor);
      }
    }
    return sum.build();
  }

  /** What divides every mass of a morning. */
  private long divisor(int day, long own) {
    BigInteger gcd = BigInteger.valueOf(own);
    for (Thing thing : plain.things) {
      gcd = gcd.gcd(BigInteger.valueOf(thing.milligrams(day)));
      gcd = gcd.gcd(BigInteger.valueOf(thing.leavesMilligrams()));
    }
    return Math.max(1, gcd.longValueExact());
  }

  private void load(int i, int day, long highest) {
    boolean whole = plain.trip.policy().basis() == Policy.Basis.LOAD;
    long own = whole ? plain.own(i, day, false) : 0;
    long divisor = divisor(day, own);
    // divisor x counted x 10^9 <= step x grain x T
    BigInteger left = BigInteger.valueOf(divisor).multiply(BigInteger.valueOf(1_000_000_000L));
    BigInteger right =
        plain.target(i).multiply(BigInteger.valueOf(plain.trip.policy().grainThousandths()));
    BigInteger gcd = left.gcd(right);
    long least = plain.step(i, day, 0);
    // Crossed bounds of a variable make a model invalid, not impossible.
    IntVar step = cp.newIntVar(Math.min(least, highest), highest, "s");
    if (least > highest) {
      cp.addBoolOr(new BoolVar[0]);
    }
    steps.add(step);
    cp.addLessOrEqual(
        LinearExpr.newBuilder()
            .addTerm(shared(i, day, divisor, own), left.divide(gcd).longValueExact())
            .addTerm(step, -right.divide(gcd).longValueExact())
            .build(),
        0);
    long allOwn = plain.own(i, day, true);
    for (BigInteger cap : plain.caps(i)) {
      long room = cap.divide(BigInteger.valueOf(1_000_000)).longValueExact() - allOwn;
      cp.addLessOrEqual(shared(i, day, 1, 0), room);
    }
  }

  private void limits(int i) {
    if (plain.hiker(i).maxPieces().isPresent()) {
      LinearExprBuilder pieces = LinearExpr.newBuilder();
      for (IntVar[] of : takes) {
        pieces.add(of[i]);
      }
      cp.addLessOrEqual(pieces.build(), plain.hiker(i).maxPieces().getAsInt());
    }
    Set<String> kinds = new LinkedHashSet<>();
    plain.things.forEach(t -> t.item().goesInto().ifPresent(kinds::add));
    for (int day = 1; day <= days; day++) {
      if (plain.room(i) >= 0) {
        LinearExprBuilder volume = LinearExpr.newBuilder();
        for (int t = 0; t < takes.length; t++) {
          Thing thing = plain.things.get(t);
          boolean inside = thing.stow() != Stow.OUTSIDE && thing.item().goesInto().isEmpty();
          if (inside && thing.thereOn(day)) {
            volume.addTerm(unused(t, i, day), thing.milliliters());
          }
        }
        cp.addLessOrEqual(volume.build(), plain.room(i));
      }
      for (String kind : kinds) {
        containers(i, day, kind);
      }
    }
  }

  private void containers(int i, int day, String kind) {
    LinearExprBuilder volume = LinearExpr.newBuilder();
    LinearExprBuilder boxes = LinearExpr.newBuilder();
    for (KitItem item : plain.hiker(i).kit()) {
      if (item.contains().filter(c -> c.kind().equals(kind)).isPresent()) {
        boxes.add(1);
        volume.add(-item.contains().get().volume().milliliters());
      }
    }
    for (int t = 0; t < takes.length; t++) {
      Thing thing = plain.things.get(t);
      if (thing.thereOn(day) && thing.contains().filter(c -> c.kind().equals(kind)).isPresent()) {
        boxes.add(takes[t][i]);
        volume.addTerm(takes[t][i], -thing.contains().get().volume().milliliters());
      }
      if (thing.thereOn(day) && thing.item().goesInto().filter(kind::equals).isPresent()) {
        volume.addTerm(unused(t, i, day), thing.milliliters());
      }
    }
    cp.addLessOrEqual(volume.build(), 0);
    for (int t = 0; t < takes.length; t++) {
      Thing thing = plain.things.get(t);
      if (thing.thereOn(day) && thing.item().goesInto().filter(kind::equals).isPresent()) {
        cp.addGreaterOrEqual(
            LinearExpr.newBuilder()
                .addTerm(boxes.build(), thing.units())
                .addTerm(unused(t, i, day), -1)
                .build(),
            0);
      }
    }
  }

  /** The split of the solver's last solution. */
  Split split(CpSolver solver) {
    List<Carry> carries = new ArrayList<>();
    List<Opened> opened = new ArrayList<>();
    for (int t = 0; t < takes.length; t++) {
      Thing thing = plain.things.get(t);
      for (int i = 0; i < hikers; i++) {
        String hiker = plain.hiker(i).id();
        int units = (int) solver.value(takes[t][i]);
        if (units > 0) {
          carries.add(new Carry(hiker, thing.ref(), units));
        }
        for (int day = 1; day <= days && thing.usedByUnits(); day++) {
          int used = (int) solver.value(opens[t][day][i]);
          if (used > 0) {
            opened.add(new Opened(day, thing.item().id(), hiker, used));
          }
        }
      }
    }
    return new Split(carries, opened, List.of());
  }

  /** Handovers from an earlier split: what anybody has more of, less what nobody had. */
  LinearExpr handovers(Split earlier) {
    LinearExprBuilder gained = LinearExpr.newBuilder();
    for (int t = 0; t < takes.length; t++) {
      Thing thing = plain.things.get(t);
      int all = 0;
      int[] before = new int[hikers];
      for (Carry carry : earlier.carries()) {
        if (carry.piece().equals(thing.ref())) {
          all += carry.units();
          for (int i = 0; i < hikers; i++) {
            before[i] += plain.hiker(i).id().equals(carry.hiker()) ? carry.units() : 0;
          }
        }
      }
      gained.add(-Math.max(0, thing.units() - all));
      for (int i = 0; i < hikers; i++) {
        if (before[i] == 0) {
          gained.add(takes[t][i]);
        } else if (before[i] < thing.units()) {
          IntVar more = cp.newIntVar(0, thing.units() - before[i], "more");
          cp.addGreaterOrEqual(
              more, LinearExpr.newBuilder().add(takes[t][i]).add(-before[i]).build());
          gained.add(more);
        }
      }
    }
    return gained.build();
  }

  private List<Integer> named(List<PieceRef> references) {
    List<Integer> found = new ArrayList<>();
    for (int t = 0; t < takes.length; t++) {
      if (references.stream().anyMatch(plain.things.get(t)::namedBy)) {
        found.add(t);
      }
    }
    return found;
  }

  private void rule(Rule rule) {
    for (int i = 0; i < hikers; i++) {
      String id = plain.hiker(i).id();
      if (rule instanceof Rule.Pinned pinned && !pinned.hiker().equals(id)) {
        named(pinned.pieces()).forEach(nobody(i));
      } else if (rule instanceof Rule.Only only && !only.hikers().contains(id)) {
        named(only.pieces()).forEach(nobody(i));
      } else if (rule instanceof Rule.Barred barred && barred.hikers().contains(id)) {
        named(barred.pieces()).forEach(nobody(i));
      } else if (rule instanceof Rule.Together together) {
        BoolVar all = cp.newBoolVar("all");
        for (int t : named(together.pieces())) {
          int units = plain.things.get(t).units();
          cp.addEquality(takes[t][i], LinearExpr.term(all, units));
        }
      } else if (rule instanceof Rule.Apart apart) {
        apart(apart, i);
      }
    }
    if (rule instanceof Rule.PartyHas has) {
      Set<String> parties = new LinkedHashSet<>(has.parties());
      if (parties.isEmpty()) {
        plain.trip.hikers().forEach(h -> parties.add(h.party().orElse("")));
      }
      parties.forEach(party -> partyHas(has, party));
    }
  }

  private java.util.function.Consumer<Integer> nobody(int i) {
    return t -> cp.addEquality(takes[t][i], 0);
  }

  private void apart(Rule.Apart rule, int i) {
    LinearExprBuilder references = LinearExpr.newBuilder();
    for (PieceRef reference : rule.pieces()) {
      BoolVar some = cp.newBoolVar("some");
      references.add(some);
      for (int t : named(List.of(reference))) {
        cp.addLessOrEqual(takes[t][i], LinearExpr.term(some, plain.things.get(t).units()));
      }
    }
    cp.addLessOrEqual(references.build(), 1);
  }

  private void partyHas(Rule.PartyHas rule, String party) {
    for (int day = 1; day <= days; day++) {
      LinearExprBuilder has = LinearExpr.newBuilder();
      for (int i = 0; i < hikers; i++) {
        if (!plain.hiker(i).party().orElse("").equals(party)) {
          continue;
        }
        for (KitItem item : plain.hiker(i).kit()) {
          has.add(item.covers().contains(rule.covers()) ? 1 : 0);
        }
        for (int t = 0; t < takes.length; t++) {
          Thing thing = plain.things.get(t);
          boolean counts = thing.item().covers().contains(rule.covers()) && thing.thereOn(day);
          if (counts && thing.isPart()) {
            throw new IllegalArgumentException("no covering items in parts here");
          }
          if (counts) {
            has.add(unused(t, i, day));
          }
        }
      }
      cp.addGreaterOrEqual(has.build(), rule.atLeast());
    }
  }
}
