package dev.faircarry.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.http.KeptService;
import dev.faircarry.http.KeptService.Reply;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** Plans change although one of the group keeps the body mass from the leader. */
@Tag("slow")
class PrivateChangeTest {
  private static final String TRIP =
      """
      {"format": "faircarry-trip/1", "name": "Round the lake", "days": 1,
       "hikers": [
         {"id": "ada", "name": "Ada", "bodyMass": "60 kg", "pack": {"mass": "6 kg"}},
         {"id": "ben", "name": "Ben", "bodyMass": "75 kg", "pack": {"mass": "8 kg"}},
         {"id": "cleo", "name": "Cleo", "targetLoad": "12 kg", "pack": {"mass": "6.5 kg"}},
         {"id": "dan", "name": "Dan", "bodyMass": "80 kg", "pack": {"mass": "7 kg"}}],
       "shared": [
         {"id": "tent", "name": "Tent", "mass": "2.9 kg"},
         {"id": "tarp", "name": "Tarp", "mass": "1.1 kg"},
         {"id": "stove", "name": "Stove", "mass": "450 g"},
         {"id": "pot", "name": "Pot", "mass": "700 g"},
         {"id": "food", "name": "Food", "count": 8, "unitMass": "600 g"},
         {"id": "rope", "name": "Rope", "mass": "1.6 kg"},
         {"id": "aid", "name": "First aid", "mass": "520 g"}]}
      """;

  /** The private mass as a number of its own, in kilograms or grams. */
  private static final Pattern MASS =
      Pattern.compile("(?<![0-9A-Za-z.])63([.]7|700)(?![0-9A-Za-z])");

  @RegisterExtension final Browser browser = new Browser();
  @TempDir private Path directory;
  private KeptService service;
  private String trip = "";
  private String leader = "";

  /** Cleo opens a link of her own making and says there what she weighs; then a split is found. */
  @BeforeEach
  void start() throws IOException {
    service = new KeptService(directory, Optional.empty(), false);
    Reply made = done(201, service.send("POST", "/v1/trips", "", TRIP));
    trip = made.location();
    leader = made.json().path("token").asText();
    String cleo = "{\"role\": \"hiker\", \"hiker\": \"cleo\"}";
    String given =
        done(201, service.send("POST", trip + "/links", leader, cleo))
            .json()
            .path("token")
            .asText();
    String own =
        done(201, service.send("POST", trip + "/links", given, cleo)).json().path("token").asText();
    done(204, change("PUT", "/hikers/cleo/privacy", own, "{\"bodyMass\": \"private\"}"));
    done(
        200,
        change("PATCH", "/hikers/cleo", own, "{\"bodyMass\": \"63.7 kg\", \"targetLoad\": null}"));
    Reply split =
        done(201, service.send("POST", trip + "/splits", leader, "", "Prefer", "wait=30"));
    String id = split.location().substring(split.location().lastIndexOf('/') + 1);
    done(204, change("PUT", "/agreed-split", leader, "{\"split\": \"" + id + "\"}"));
  }

  @AfterEach
  void end() {
    service.close();
  }

  private Reply change(String method, String path, String token, String body) {
    return service.send(
        method, trip + path, token, body, "If-Match", service.get(trip, token).tag());
  }

  private static Reply done(int status, Reply reply) {
    assertEquals(status, reply.status(), reply.body());
    return reply;
  }

  private String id() {
    return trip.substring(trip.lastIndexOf('/') + 1);
  }

  private Screen leading(String screenName, String seen) {
    Screen screen = browser.person(service.port()).open("/#/open/" + id() + "/" + leader);
    screen.sees("Agreed on");
    return screen.open("/#/t/" + id() + "/" + screenName).sees(seen);
  }

  private JsonNode told(String path) {
    return done(200, service.get(trip + path, leader)).json();
  }

  @Test
  void somebodyDoesNotCome() {
    String before = told("/state").path("agreedSplit").asText();
    Screen screen = leading("change", "What now?");
    new Select(screen.find("[data-pointer='/changes/0/hiker']")).selectByVisibleText("Dan");
    button(screen, "What now?").click();
    screen.until("no handovers", () -> !screen.all("ol.handovers li").isEmpty());
    screen.sees("Cleo keeps a body mass private");
    assertFalse(screen.text().contains("the worst morning"), screen::text);
    screen.keep("curve-laptop").size(Screen.Size.PHONE).keep("curve-phone");
    button(screen, "Accept").click();
    screen.sees("Done: the trip is changed and the new split is agreed on.");
    List<String> left = new ArrayList<>();
    told("").path("hikers").forEach(hiker -> left.add(hiker.path("id").asText()));
    assertEquals(List.of("ada", "ben", "cleo"), left);
    String after = told("/state").path("agreedSplit").asText();
    assertNotEquals(before, after);
    assertFalse(told("/splits/" + after).at("/kept/stale").asBoolean(true));
    nobodyWasTold(screen);
  }

  /** The agreed split is proved the fairest, so nothing can be gained from it. */
  @Test
  void thingsAreEvenedOutFromTheAgreedSplit() {
    Screen screen = leading("loads", "Agreed on");
    button(screen, "Even out from here").click();
    button(screen, "Show what that gains").click();
    screen.sees("Nothing fairer was found from here");
    nobodyWasTold(screen);
  }

  private static void nobodyWasTold(Screen screen) {
    Traffic traffic = screen.traffic();
    assertTrue(traffic.bodies().stream().anyMatch(b -> b.contains("\"curve\"")), "no answer seen");
    for (List<String> seen : List.of(traffic.bodies(), traffic.sent("/"), traffic.requests())) {
      assertTrue(seen.stream().noneMatch(text -> MASS.matcher(text).find()), "the mass is seen");
    }
  }

  private static WebElement button(Screen screen, String words) {
    screen.until("no button “" + words + "”", () -> !buttons(screen, words).isEmpty());
    return buttons(screen, words).get(0);
  }

  private static List<WebElement> buttons(Screen screen, String words) {
    return screen.all("button").stream().filter(b -> b.getText().contains(words)).toList();
  }
}
