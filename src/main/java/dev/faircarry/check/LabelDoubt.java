package dev.faircarry.check;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.MassFrom;
import java.math.BigInteger;
import java.util.List;

/**
 * How far masses that nobody weighed could shift the worst target ratio.
 *
 * @param unweighedMilligrams of all packs on the first morning
 * @param worstThousandths the worst target ratio as stated, rounded up
 * @param couldBeThousandths the worst if every label and estimate of one pack were too low
 */
public record LabelDoubt(long unweighedMilligrams, long worstThousandths, long couldBeThousandths) {
  /** Common practice: labels are off by a tenth, guesses by a quarter. */
  public static final int LABEL_PERCENT = 10;

  public static final int ESTIMATE_PERCENT = 25;

  private static final long NANOGRAMS_TIMES_THOUSAND = 1_000_000_000L;

  static LabelDoubt of(
      Itinerary itinerary, Goods goods, Holdings holdings, List<HikerLoads> loads) {
    long unweighed = 0;
    long worst = 0;
    long couldBe = 0;
    boolean whole = itinerary.trip.policy().basis() == dev.faircarry.trip.Policy.Basis.LOAD;
    for (int i = 0; i < loads.size(); i++) {
      Sum own = own(itinerary.hikers.get(i));
      for (Morning morning : loads.get(i).mornings()) {
        Sum shared = shared(goods, holdings, morning.day(), i);
        if (morning.day() == 1) {
          unweighed += own.unweighed + shared.unweighed;
        }
        long doubt = shared.doubt + (whole ? own.doubt : 0);
        worst = Math.max(worst, ratio(morning.countedMilligrams(), loads.get(i)));
        couldBe = Math.max(couldBe, ratio(morning.countedMilligrams() + doubt, loads.get(i)));
      }
    }
    return new LabelDoubt(unweighed, worst, couldBe);
  }

  private static long ratio(long milligrams, HikerLoads loads) {
    return LoadSums.up(
        BigInteger.valueOf(milligrams).multiply(BigInteger.valueOf(NANOGRAMS_TIMES_THOUSAND)),
        BigInteger.valueOf(loads.targetNanograms()));
  }

  private static final class Sum {
    long unweighed;
    long doubt;

    void add(MassFrom from, long milligrams) {
      if (from != MassFrom.SCALE) {
        unweighed += milligrams;
        int percent = from == MassFrom.LABEL ? LABEL_PERCENT : ESTIMATE_PERCENT;
        doubt += milligrams * percent / 100;
      }
    }
  }

  private static Sum own(Hiker hiker) {
    Sum sum = new Sum();
    hiker.pack().ifPresent(pack -> sum.add(pack.massFrom(), pack.mass().milligrams()));
    for (KitItem item : hiker.kit()) {
      if (!item.worn() && !item.luxury()) {
        sum.add(item.massFrom(), item.mass().milligrams());
      }
    }
    return sum;
  }

  private static Sum shared(Goods goods, Holdings holdings, int day, int hiker) {
    Sum sum = new Sum();
    for (Goods.Good good : goods.all) {
      sum.add(from(good), good.massOn(day) * holdings.held(good, day, hiker));
    }
    return sum;
  }

  static MassFrom from(Goods.Good good) {
    return good.item()
        .form()
        .match(
            new Form.Cases<MassFrom>() {
              @Override
              public MassFrom whole(Form.Whole form) {
                return form.massFrom();
              }

              @Override
              public MassFrom parts(Form.Parts form) {
                return form.parts().stream()
                    .filter(p -> good.ref().part().equals(java.util.Optional.of(p.id())))
                    .map(Form.Part::massFrom)
                    .findFirst()
                    .orElse(MassFrom.LABEL);
              }

              @Override
              public MassFrom counted(Form.Counted form) {
                return form.massFrom();
              }
            });
  }
}
