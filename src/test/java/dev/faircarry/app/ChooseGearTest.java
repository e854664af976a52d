package dev.faircarry.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import dev.faircarry.choose.Answer;
import dev.faircarry.json.Reading;
import dev.faircarry.json.TripReader;
import dev.faircarry.solve.SplitSolver;
import dev.faircarry.trip.Trip;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Choosing and splitting together, with the solver and the checker as they are. */
class ChooseGearTest {
  private static final ChooseGear GEAR = new ChooseGear(SplitSolver::solve, new Checked());
  private static final String STRUCK =
      "{'covers':'pot','atLeast':0},{'covers':'flame','atLeast':0},{'covers':'repair','atLeast':0},"
          + "{'covers':'water-treatment','atLeast':0},{'covers':'navigation','atLeast':0},"
          + "{'covers':'light','atLeast':0},{'covers':'first-aid','atLeast':0}";

  private static Trip trip(String document) {
    Reading<Trip> reading =
        TripReader.read(document.replace('\'', '"').getBytes(StandardCharsets.UTF_8));
    return reading instanceof Reading.Read<Trip> good ? good.value() : fail(reading.toString());
  }

  /**
   * Two hikers with targets of 10 kg each and 4 kg of own kit; a 5 kg tent makes the worst 0.9, a
   * shelter of 1 kg instead 0.5.
   */
  @Test
  void effectOnTheWorstLoad() {
    Trip trip =
        trip(
            "{'format':'faircarry-trip/1','name':'n','days':2,'policy':{'grain':1},'hikers':[{'id':'a','targetLoad':'10 kg','kit':[{'id':'k','mass':'4 kg'}]},"
                + "{'id':'b','targetLoad':'10 kg','kit':[{'id':'k','mass':'4 kg'}]}],'shared':[{'id':'tent','mass':'5 kg','sleeps':2}],"
                + "'plan':{'taking':{'needs':["
                + STRUCK
                + "],'offers':[{'id':'shelter','mass':'1 kg','price':'100','covers':[{'need':'sleeping','amount':2}]}]}}}");
    ChooseGear.Found found = GEAR.choose(trip, 10_000, 100_000, () -> false);
    ChooseGear.Effect effect = found.effect().orElseThrow();
    assertEquals(900, ChooseGear.ratioThousandths(effect.before().worst().orElseThrow()));
    assertEquals(500, ChooseGear.ratioThousandths(effect.after().worst().orElseThrow()));
    assertTrue(effect.before().proved() && effect.after().proved());
    assertEquals("shelter", found.applied().orElseThrow().trip().shared().get(0).id());
  }

  /** The tent cannot be carried before, the shelter can after. */
  @Test
  void effectOnWhatWasImpossible() {
    Trip trip =
        trip(
            "{'format':'faircarry-trip/1','name':'n','days':2,'hikers':[{'id':'a','targetLoad':'10 kg','pack':{'mass':'1 kg','volume':'20 L'}}],"
                + "'shared':[{'id':'tent','mass':'2 kg','volume':'30 L','sleeps':1}],"
                + "'plan':{'taking':{'needs':["
                + STRUCK
                + "],'offers':[{'id':'shelter','mass':'1 kg','volume':'9 L','covers':[{'need':'sleeping','amount':1}]}]}}}");
    ChooseGear.Effect effect =
        GEAR.choose(trip, 10_000, 100_000, () -> false).effect().orElseThrow();
    assertEquals(ChooseGear.Side.Kind.IMPOSSIBLE, effect.before().kind());
    assertEquals(ChooseGear.Side.Kind.SOLVED, effect.after().kind());
    assertEquals(200, ChooseGear.ratioThousandths(effect.after().worst().orElseThrow()));
  }

  @Test
  void noSplitsUnlessAskedFor() {
    Trip trip =
        trip(
            "{'format':'faircarry-trip/1','name':'n','days':1,'hikers':[{'id':'a','targetLoad':'10 kg'}],"
                + "'plan':{'taking':{'needs':["
                + STRUCK
                + "]}}}");
    ChooseGear.Found found = GEAR.choose(trip, 10_000, 0, () -> false);
    assertInstanceOf(Answer.Choices.class, found.answer());
    assertEquals(Optional.empty(), found.effect());
  }

  /** 1,000.4 g of a target of 1,000 g is above it, and never looks on target. */
  @Test
  void ratioIsRoundedUp() {
    assertEquals(
        1001,
        ChooseGear.ratioThousandths(new Worst("a", "A", 1, 1_000_400, 1_000_000_000_000L, 0)));
    assertEquals(
        1000,
        ChooseGear.ratioThousandths(new Worst("a", "A", 1, 1_000_000, 1_000_000_000_000L, 0)));
  }
}
