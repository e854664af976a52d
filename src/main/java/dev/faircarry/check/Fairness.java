package dev.faircarry.check;

import dev.faircarry.split.Carry;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How fair a split is.
 *
 * @param standings every hiker's heaviest morning against target, in the trip's order
 * @param spreadThousandths between the highest and the lowest of these ratios
 * @param gains the one handover, and the one exchange, that would gain most; those that gain
 *     nothing are left out
 */
public record Fairness(List<Standing> standings, long spreadThousandths, List<Gain> gains) {
  /** Splits tried for the gains; what is beyond is not tried. */
  public static final int MOST_TRIED = 3000;

  public Fairness {
    standings = List.copyOf(standings);
    gains = List.copyOf(gains);
  }

  /**
   * A hiker's heaviest morning.
   *
   * @param ratioThousandths rounded up
   * @param aboveMilligrams what counts above target; negative below
   */
  public record Standing(String hiker, int day, long ratioThousandths, long aboveMilligrams) {}

  /**
   * A move.
   *
   * @param back what the receiver gives in return
   * @param worstThousandths the worst ratio after it
   */
  public record Gain(
      String from,
      String to,
      PieceRef piece,
      Optional<PieceRef> back,
      Verdict verdict,
      long worstThousandths) {}

  static Fairness of(Trip trip, Split split, Verdict verdict) {
    List<Standing> standings = new ArrayList<>();
    long high = Long.MIN_VALUE;
    long low = Long.MAX_VALUE;
    for (HikerLoads loads : verdict.hikers()) {
      Standing standing = standing(loads);
      standings.add(standing);
      high = Math.max(high, standing.ratioThousandths());
      low = Math.min(low, standing.ratioThousandths());
    }
    return new Fairness(standings, Math.max(0, high - low), gains(trip, split, verdict));
  }

  private static Standing standing(HikerLoads loads) {
    Morning heaviest = loads.mornings().get(0);
    for (Morning morning : loads.mornings()) {
      if (morning.countedMilligrams() > heaviest.countedMilligrams()) {
        heaviest = morning;
      }
    }
    return new Standing(
        loads.hiker(),
        heaviest.day(),
        ratio(heaviest, loads),
        heaviest.countedMilligrams() - Math.floorDiv(loads.targetNanograms(), 1_000_000L));
  }

  private static long ratio(Morning morning, HikerLoads loads) {
    return LoadSums.up(
        BigInteger.valueOf(morning.countedMilligrams())
            .multiply(BigInteger.valueOf(1_000_000_000L)),
        BigInteger.valueOf(loads.targetNanograms()));
  }

  private static List<Gain> gains(Trip trip, Split split, Verdict verdict) {
    // Opening plans and handovers at camps would have to be made anew.
    List<Carry> carries =
        split.carries().stream()
            .filter(c -> split.opened().stream().noneMatch(o -> o.item().equals(c.piece().item())))
            .filter(
                c -> split.handoversAtCamp().stream().noneMatch(h -> h.piece().equals(c.piece())))
            .toList();
    List<Carry> heaviestFirst = new ArrayList<>(carries);
    List<String> order =
        verdict.hikers().stream()
            .sorted(
                (a, b) ->
                    Long.compare(standing(b).ratioThousandths(), standing(a).ratioThousandths()))
            .map(HikerLoads::hiker)
            .toList();
    heaviestFirst.sort(
        (a, b) -> Integer.compare(order.indexOf(a.hiker()), order.indexOf(b.hiker())));
    Tries tries = new Tries(trip, split, verdict);
    for (Carry carry : heaviestFirst) {
      for (String to : order) {
        tries.single(carry, to);
      }
    }
    for (Carry one : heaviestFirst) {
      for (Carry other : heaviestFirst) {
        tries.exchange(one, other);
      }
    }
    List<Gain> gains = new ArrayList<>();
    tries.single.ifPresent(gains::add);
    tries
        .exchange
        .filter(
            g ->
                tries.single.isEmpty()
                    || Takers.better(g.verdict(), tries.single.get().verdict()) < 0)
        .ifPresent(gains::add);
    return gains;
  }

  private static final class Tries {
    private final Trip trip;
    private final Split split;
    private final Verdict now;
    private Optional<Gain> single = Optional.empty();
    private Optional<Gain> exchange = Optional.empty();
    private int tried;

    Tries(Trip trip, Split split, Verdict now) {
      this.trip = trip;
      this.split = split;
      this.now = now;
    }

    void single(Carry carry, String to) {
      if (!carry.hiker().equals(to) && tried < MOST_TRIED) {
        List<Carry> moved = new ArrayList<>(split.carries());
        move(moved, carry, to);
        single = attempt(moved, carry, to, Optional.empty(), single);
      }
    }

    /** Exchanges are tried from the heavier hiker's side only; the other side is the same one. */
    void exchange(Carry one, Carry other) {
      if (!one.hiker().equals(other.hiker())
          && !one.piece().equals(other.piece())
          && one.piece().compareTo(other.piece()) < 0
          && tried < 2 * MOST_TRIED) {
        List<Carry> moved = new ArrayList<>(split.carries());
        move(moved, one, other.hiker());
        move(moved, other, one.hiker());
        exchange = attempt(moved, one, other.hiker(), Optional.of(other.piece()), exchange);
      }
    }

    private Optional<Gain> attempt(
        List<Carry> carries, Carry carry, String to, Optional<PieceRef> back, Optional<Gain> best) {
      tried++;
      Verdict verdict =
          SplitCheck.verdict(trip, new Split(carries, split.opened(), split.handoversAtCamp()));
      Verdict toBeat = best.map(Gain::verdict).orElse(now);
      if (!verdict.keepsRules() || Takers.better(verdict, toBeat) >= 0) {
        return best;
      }
      return Optional.of(new Gain(carry.hiker(), to, carry.piece(), back, verdict, worst(verdict)));
    }

    private static long worst(Verdict verdict) {
      return verdict.hikers().stream()
          .mapToLong(h -> standing(h).ratioThousandths())
          .max()
          .orElse(0);
    }

    /** One unit, from one hiker to another. */
    private static void move(List<Carry> carries, Carry carry, String to) {
      units(carries, carry.hiker(), carry.piece(), -1);
      units(carries, to, carry.piece(), 1);
    }

    private static void units(List<Carry> carries, String hiker, PieceRef piece, int more) {
      for (int k = 0; k < carries.size(); k++) {
        Carry c = carries.get(k);
        if (c.hiker().equals(hiker) && c.piece().equals(piece)) {
          carries.remove(k);
          if (c.units() + more > 0) {
            carries.add(k, new Carry(hiker, piece, c.units() + more));
          }
          return;
        }
      }
      carries.add(new Carry(hiker, piece, more));
    }
  }
}
