package dev.faircarry.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.plan.Amount;
import dev.faircarry.trip.plan.Fuel;
import dev.faircarry.trip.plan.Offer;
import dev.faircarry.trip.plan.Plan;
import dev.faircarry.trip.plan.Surface;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the plan of a document means, that it comes back, and what can be wrong with it. */
class PlanReaderTest {
  private static final byte[] DOCUMENT = Documents.resource("/trips/plan-everything.json");
  private static final ObjectMapper MAPPER = new ObjectMapper();

  @Test
  void fields() {
    Trip trip = Documents.trip(DOCUMENT);
    Plan plan = trip.plan().orElseThrow();
    assertEquals(Surface.LIGHT_BRUSH, plan.route().get(1).surface());
    assertEquals(609_600, plan.route().get(1).climb().millimeters());
    assertEquals(OptionalInt.of(3000), plan.food().orElseThrow().kcalPerPersonDay());
    Fuel fuel = plan.fuel().orElseThrow();
    assertEquals(Optional.of(Fuel.Kind.GAS), fuel.kind());
    assertEquals(550_000, fuel.efficiency().orElseThrow().millionths());
    assertEquals(-5_000, fuel.snow().orElseThrow().temperature().millicelsius());
    assertEquals(true, fuel.containers().get(1).refillable());
    assertEquals(true, plan.water().orElseThrow().stretches().get(1).dryCamp());
    assertEquals("6 kg", plan.goals().orElseThrow().baseMassOf("ines").orElseThrow().entered());
    assertEquals("7 kg", plan.goals().orElseThrow().baseMassOf("jo").orElseThrow().entered());
    List<Offer> offers = plan.taking().orElseThrow().offers();
    assertEquals(List.of(new Offer.Cover("pole", new Amount.Count(1))), offers.get(0).requires());
    assertEquals(1300, offers.get(2).covers().get(0).amount().size());
    assertEquals(List.of("ines/quilt"), offers.get(1).makesUnnecessary());
    assertEquals("850 g", trip.hikers().get(0).kit().get(0).labelMass().orElseThrow().entered());
    assertEquals(Optional.of("sleep"), trip.shared().get(0).purpose());
  }

  @Test
  void comesBackAsItWas() throws IOException {
    Trip trip = Documents.trip(DOCUMENT);
    byte[] written = TripWriter.write(trip);
    assertEquals(trip, Documents.trip(written));
    JsonNode before = MAPPER.readTree(DOCUMENT).get("plan");
    assertEquals(before, MAPPER.readTree(written).get("plan"));
  }

  /** Each fault alone, put in place of a value of the document. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/plan/route/0/day | -1 | no-such-day /plan/route/0/day",
        "/plan/route/0/day | 2 | duplicate-name /plan/route/1/day",
        "/plan/route/0/distance | \"0 km\" | out-of-range /plan/route/0/distance",
        "/plan/route/0/distance | \"-3 km\" | negative /plan/route/0/distance",
        "/plan/route/0/distance | \"3\" | no-unit /plan/route/0/distance",
        "/plan/route/0/kmPerHour | 0 | out-of-range /plan/route/0/kmPerHour",
        "/plan/route/0/campHeight | \"9001 m\" | out-of-range /plan/route/0/campHeight",
        "/plan/route/0/campHeight | \"-501 m\" | out-of-range /plan/route/0/campHeight",
        "/plan/route/0/surface | \"lava\" | unknown-word /plan/route/0/surface",
        "/plan/route/0/steepDescent | \"101 m\" | contradiction /plan/route/0/descent",
        "/plan/food/kcalPerPersonDay | -1 | out-of-range /plan/food/kcalPerPersonDay",
        "/plan/food/kcalPerGram | 9.1 | out-of-range /plan/food/kcalPerGram",
        "/plan/food/mix/fat | \"30 g\" | contradiction /plan/food/mix/per",
        "/plan/food/mix/fat | \"30\" | no-unit /plan/food/mix/fat",
        "/plan/food/meals/0/leaves | \"171 g\" | leaves-too-much /plan/food/meals/0/leaves",
        "/plan/food/meals/0/perPersonDay | 0 | out-of-range /plan/food/meals/0/perPersonDay",
        "/plan/fuel/efficiency | 1.01 | out-of-range /plan/fuel/efficiency",
        "/plan/fuel/efficiency | 0 | out-of-range /plan/fuel/efficiency",
        "/plan/fuel/efficiency | -0.5 | out-of-range /plan/fuel/efficiency",
        "/plan/fuel/efficiency | 1e300 | out-of-range /plan/fuel/efficiency",
        "/plan/fuel/efficiency | \"high\" | wrong-type /plan/fuel/efficiency",
        "/plan/fuel/height | \"12 km\" | out-of-range /plan/fuel/height",
        "/plan/fuel/startTemperature | \"-1 °C\" | out-of-range /plan/fuel/startTemperature",
        "/plan/fuel/startTemperature | \"hot\" | not-a-quantity /plan/fuel/startTemperature",
        "/plan/fuel/snow/temperature | \"1 °C\" | out-of-range /plan/fuel/snow/temperature",
        "/plan/fuel/megajoulesPerKilogram | 0 | out-of-range /plan/fuel/megajoulesPerKilogram",
        "/plan/fuel/containers/0/fuel | \"0 g\" | out-of-range /plan/fuel/containers/0/fuel",
        "/plan/fuel/containers/1/id | \"small\" | duplicate-id /plan/fuel/containers/1/id",
        "/plan/water/bottleCapacity | \"0 L\" | out-of-range /plan/water/bottleCapacity",
        "/plan/water/stretches/0/day | 4 | no-such-day /plan/water/stretches/0/day",
        "/plan/water/stretches/0/walkingMinutes | -5 | out-of-range /plan/water/stretches/0/walkingMinutes",
        "/plan/goals/hikers/0/hiker | \"nobody\" | unknown-hiker /plan/goals/hikers/0/hiker",
        "/plan/taking/needs/0/atLeast | -1 | out-of-range /plan/taking/needs/0/atLeast",
        "/plan/taking/needs/1/atLeast | 2 | need-units-differ /plan/taking/offers/2/covers/0/amount",
        "/plan/taking/offers/0/owner | \"nobody\" | unknown-hiker /plan/taking/offers/0/owner",
        "/plan/taking/offers/0/forHiker | \"jo\" | conflicting-fields /plan/taking/offers/0",
        "/plan/taking/offers/0/id | \"tent\" | duplicate-id /plan/taking/offers/0/id",
        "/plan/taking/offers/0/available | 0 | out-of-range /plan/taking/offers/0/available",
        "/plan/taking/offers/0/price | \"200000\" | out-of-range /plan/taking/offers",
        "/plan/taking/offers/1/makesUnnecessary/0 | \"ines/tent\" | unknown-thing /plan/taking/offers/1/makesUnnecessary/0",
        "/plan/taking/keep/0 | \"jo\" | unknown-thing /plan/taking/keep/0",
        "/plan/taking/budget | \"-1\" | negative /plan/taking/budget",
        "/plan/taking/wish | 1 | unknown-field /plan/taking/wish",
        "/plan/taking/offers/0 | 7 | wrong-type /plan/taking/offers/0",
        "/plan | null | wrong-type /plan",
        "/plan/route | {} | wrong-type /plan/route"
      })
  void oneFaultOneIssue(String place, String value, String issue) throws IOException {
    JsonNode root = MAPPER.readTree(DOCUMENT);
    int cut = place.lastIndexOf('/');
    JsonNode parent = root.at(place.substring(0, cut));
    String field = place.substring(cut + 1);
    if (parent instanceof ArrayNode list) {
      list.set(Integer.parseInt(field), MAPPER.readTree(value));
    } else {
      ((ObjectNode) parent).set(field, MAPPER.readTree(value));
    }
    assertEquals(
        List.of(issue),
        Documents.codes(Documents.issues(TripReader.read(MAPPER.writeValueAsBytes(root)))));
  }
}
