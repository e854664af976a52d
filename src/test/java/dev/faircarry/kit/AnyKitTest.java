package dev.faircarry.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.SplitCheck;
import dev.faircarry.check.Verdict;
import dev.faircarry.oracle.TripGenerator;
import dev.faircarry.solve.SplitSolver;
import dev.faircarry.solve.Watch;
import dev.faircarry.split.Outcome;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

/** What things add up to in a report is what the checker weighs, on random trips of every kind. */
class AnyKitTest {
  private static final TripGenerator.Shape SHAPE = TripGenerator.Shape.of(4, 4, 9);
  private static final Split NOTHING = new Split(List.of(), List.of(), List.of());

  @Test
  void partsAddUpToTheLoadOfTheFirstMorning() throws Exception {
    int split = 0;
    for (long seed = 0; seed < 150; seed++) {
      Trip trip = TripGenerator.trip(seed, SHAPE);
      adds(trip, NOTHING, "own kit, seed " + seed);
      if (SplitSolver.solve(trip, 2_000, Watch.NONE) instanceof Outcome.Solved solved) {
        split++;
        adds(trip, solved.split(), "split, seed " + seed);
      }
    }
    assertTrue(split > 25, split + " splits");
  }

  private static void adds(Trip trip, Split split, String message) throws Exception {
    Verdict verdict = SplitCheck.verdict(trip, split);
    KitReport report = KitReport.of(trip, split, verdict);
    long group = 0;
    for (KitOf kit : report.hikers()) {
      Weights first = kit.mornings().get(0);
      long worn = sum(kit.byPlace(), "worn", true);
      assertEquals(first.packMilligrams(), sum(kit.byPlace(), "worn", false), message);
      assertEquals(first.wornMilligrams(), worn, message);
      assertEquals(
          first.skinOutMilligrams(),
          kit.byPurpose().stream().mapToLong(Share::massMilligrams).sum(),
          message);
      assertEquals(
          first.packMilligrams(), first.baseMilligrams() + first.consumablesMilligrams(), message);
      if (split.carries().isEmpty()) {
        assertEquals(first.baseMilligrams(), kit.ownBaseMilligrams(), message);
      }
      group += first.packMilligrams();
    }
    assertEquals(group, report.group().mornings().get(0).packMilligrams(), message);
    parse(LoadPlot.of(trip, verdict, "Take care."));
    parse(MakeupPlot.of(trip, report, "Take care."));
  }

  private static long sum(List<Share> shares, String name, boolean is) {
    return shares.stream()
        .filter(s -> s.name().equals(name) == is)
        .mapToLong(Share::massMilligrams)
        .sum();
  }

  private static void parse(String svg) throws Exception {
    DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)));
  }
}
