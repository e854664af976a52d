package dev.faircarry.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import dev.faircarry.check.HikerLoads;
import dev.faircarry.check.Morning;
import dev.faircarry.check.Verdict;
import dev.faircarry.effort.CostModel;
import dev.faircarry.effort.Rate;
import dev.faircarry.effort.WalkingRule;
import dev.faircarry.json.Reading;
import dev.faircarry.json.TripReader;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Trip;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** Reports and plots of two small kits, worked out by hand. */
class KitReportTest {
  private static final Trip TRIP = trip();

  /**
   * Ines: pack 1,300, quilt 900, lamp 50, first aid 150 = 2,400 g own, tent 2,400 g; poles 480 g
   * worn.
   */
  private static final Split SPLIT =
      new Split(
          List.of(
              new Carry("ines", PieceRef.item("tent"), 1),
              new Carry("jo", PieceRef.item("stove"), 1),
              new Carry("jo", PieceRef.item("filter"), 1)),
          List.of(),
          List.of());

  private static final Verdict VERDICT =
      new Verdict(
          List.of(),
          List.of(
              new HikerLoads(
                  "ines",
                  12_200_000_000_000L,
                  OptionalLong.of(61_000_000),
                  List.of(morning(1, 4_800_000, 0, 480_000), morning(2, 4_800_000, 0, 480_000))),
              new HikerLoads(
                  "jo",
                  200_000_000_000L,
                  OptionalLong.of(80_000_000),
                  List.of(morning(1, 245_000, 0, 0), morning(2, 145_000, 100_000, 0)))),
          List.of(),
          0,
          0);

  private static Morning morning(int day, long base, long consumables, long worn) {
    return new Morning(
        day,
        base + consumables,
        base + consumables,
        0,
        OptionalLong.empty(),
        0,
        base,
        consumables,
        worn,
        0);
  }

  private static Trip trip() {
    String path = "/trips/plan-everything.json";
    try (InputStream in = Objects.requireNonNull(KitReportTest.class.getResourceAsStream(path))) {
      Reading<Trip> reading = TripReader.read(in.readAllBytes());
      return reading instanceof Reading.Read<Trip> good ? good.value() : fail(reading.toString());
    } catch (IOException e) {
      throw new AssertionError(path, e);
    }
  }

  private static final KitReport REPORT = KitReport.of(TRIP, SPLIT, VERDICT);

  @Test
  void weightsByMorningAreTheVerdicts() {
    KitOf ines = REPORT.hikers().get(0);
    assertEquals(Optional.of("ines"), ines.hiker());
    assertEquals(new Weights(1, 4_800_000, 0, 4_800_000, 480_000), ines.mornings().get(0));
    assertEquals(5_280_000, ines.mornings().get(0).skinOutMilligrams());
    assertEquals(2_400_000, ines.ownBaseMilligrams());
    Weights second = REPORT.group().mornings().get(1);
    assertEquals(new Weights(2, 4_945_000, 100_000, 5_045_000, 480_000), second);
  }

  @Test
  void byPurposeAndByPlace() {
    KitOf ines = REPORT.hikers().get(0);
    assertEquals(
        List.of(
            new Share("sleep", 3_300_000, 2),
            new Share("pack", 1_300_000, 1),
            new Share("pole", 480_000, 1),
            new Share("first-aid", 150_000, 1),
            new Share("light", 50_000, 1)),
        ines.byPurpose());
    assertEquals(
        List.of(
            new Share("inside", 3_500_000, 4),
            new Share("pack", 1_300_000, 1),
            new Share("worn", 480_000, 1)),
        ines.byPlace());
  }

  @Test
  void heaviestFewWithoutWhatIsWorn() {
    assertEquals(
        List.of("tent", "ines/pack", "ines/quilt", "ines/kit-a", "ines/lamp"),
        REPORT.hikers().get(0).heaviest().stream().map(Carried::ref).toList());
  }

  /** The pack claims 1.1 kg and weighs 1.3, the quilt claims 850 g and weighs 900. */
  @Test
  void claimedAgainstWeighed() {
    KitOf ines = REPORT.hikers().get(0);
    assertEquals(
        List.of(200_000L, 50_000L), ines.drifts().stream().map(Drift::driftMilligrams).toList());
    assertEquals(250_000, ines.driftMilligrams());
    assertEquals(50_000 + 480_000 + 150_000 + 2_400_000, ines.claimedOnlyMilligrams());
  }

  @Test
  void costAndGoals() {
    KitOf ines = REPORT.hikers().get(0);
    assertEquals(25_000, ines.costHundredths());
    assertEquals(3, ines.costUnknown());
    assertEquals(Optional.of(new Goal(6_000_000, 4_800_000)), ines.baseGoal());
    assertEquals(-1_200_000, ines.baseGoal().orElseThrow().distance());
    assertEquals(Optional.of(new Goal(70_000, 25_000)), ines.spendingGoal());
    assertEquals(Optional.of(7_000_000L), REPORT.hikers().get(1).baseGoal().map(Goal::goal));
  }

  @Test
  void whereThingsBelong() {
    assertEquals(
        List.of("ines/kit-a AT_HAND", "tent OUTSIDE"),
        REPORT.hikers().get(0).advice().stream().map(a -> a.ref() + " " + a.better()).toList());
    assertEquals(Stow.INSIDE, REPORT.hikers().get(1).advice().get(0).stow());
  }

  @Test
  void effortOfEachHikerAndDay() {
    EffortReport report =
        EffortReport.of(TRIP, VERDICT, WalkingRule.NAISMITH_LANGMUIR, CostModel.LCDA);
    // Day 1 at 4.5 km/h: 12 / 4.5 h, 600 m up an hour, 200 m gentle less 6:40, 100 m steep more
    // 3:20.
    assertEquals(217, report.hikers().get(0).days().get(0).minutes());
    assertTrue(report.hikers().get(0).days().get(0).kilocalories().isPresent());
    Trip noRoute =
        new Trip(TRIP.name(), 2, TRIP.policy(), TRIP.hikers(), TRIP.shared(), TRIP.rules());
    assertEquals(
        Optional.of(Rate.Reason.NO_ROUTE),
        EffortReport.of(noRoute, VERDICT, WalkingRule.TOBLER, CostModel.LCDA)
            .hikers()
            .get(0)
            .days()
            .get(0)
            .refused());
  }

  @Test
  void plotsSayWhatTheyShow() throws Exception {
    Document loads = parsed(LoadPlot.of(TRIP, VERDICT, "Take care."));
    String words = loads.getElementsByTagName("desc").item(0).getTextContent();
    // 4.8 of 12.2 kg is 60.7 % below, 245 of 200 g 22.5 % above.
    assertTrue(words.contains("Ines, day 1: 4.80 kg, \u221260.7 %."), words);
    assertTrue(words.contains("Jo, day 1: 0.25 kg, +22.5 %."), words);
    assertEquals(4, loads.getElementsByTagName("circle").getLength());
    Document makeup = parsed(MakeupPlot.of(TRIP, REPORT, "Take care."));
    String parts = makeup.getElementsByTagName("desc").item(0).getTextContent();
    assertTrue(parts.contains("Ines, sleep: 3.30 kg."), parts);
    assertEquals(
        REPORT.hikers().stream().mapToInt(k -> k.byPurpose().size()).sum() + 1,
        makeup.getElementsByTagName("rect").getLength());
  }

  /**
   * Whatever somebody is called, the picture stays one well-formed document without script or
   * address.
   */
  @Test
  void namesCannotBreakOut() throws Exception {
    Trip odd = renamed("</text><script>alert(1)</script>\u0001\u202Eevil & \"'");
    for (String svg :
        List.of(
            LoadPlot.of(odd, VERDICT, "Take care."),
            MakeupPlot.of(odd, KitReport.of(odd, SPLIT, VERDICT), "Take care."))) {
      Document document = parsed(svg);
      assertEquals(0, document.getElementsByTagName("script").getLength());
      assertFalse(svg.contains("href"), svg);
    }
  }

  private static Trip renamed(String name) {
    return new Trip(
        name,
        TRIP.days(),
        TRIP.policy(),
        TRIP.hikers().stream()
            .map(
                h ->
                    new dev.faircarry.trip.Hiker(
                        h.id(),
                        name,
                        h.bodyMass(),
                        h.targetLoad(),
                        h.targetFraction(),
                        h.capFraction(),
                        h.capLoad(),
                        h.maxPieces(),
                        h.party(),
                        h.minor(),
                        h.leavesAfterDay(),
                        h.pack(),
                        h.kit()))
            .toList(),
        TRIP.shared(),
        TRIP.rules(),
        TRIP.plan());
  }

  private static Document parsed(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory.newDocumentBuilder().parse(new InputSource(new java.io.StringReader(svg)));
  }
}
