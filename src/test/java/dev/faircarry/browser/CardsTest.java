package dev.faircarry.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Hikers read their cards, on the screen, without network, and on paper. */
@Tag("slow")
class CardsTest {
  @RegisterExtension final Browser browser = new Browser();
  @TempDir Path directory;
  private Group group;

  @BeforeEach
  void begin() {
    group = new Group(directory).agreed();
  }

  @AfterEach
  void end() {
    group.close();
  }

  private Screen person() {
    return browser.person(group.service.port());
  }

  @Test
  void ownLinkLeadsToTheOwnCard() {
    Screen asha = person().size(Screen.Size.PHONE);
    asha.open(group.address(group.link("asha"))).sees("If somebody does not come");
    asha.find(".card[data-hiker=asha]");
    String text = asha.text();
    assertTrue(text.contains("Over the two passes"), text);
    assertTrue(text.contains("of yours") || text.contains("Whose bag is opened"), text);
    assertEquals(
        "/#/t/" + group.id() + "/card",
        String.valueOf(asha.run("return location.pathname + location.hash")),
        "the token is out of the address");
    asha.keep("phone");
    asha.size(Screen.Size.LAPTOP).keep("laptop");
  }

  @Test
  void ticksStayWhenTheCardIsOpenedAgain() {
    Screen bo = person();
    bo.open(group.address(group.link("bo"))).find(".card input[type=checkbox]").click();
    bo.open("/docs").find(".opblock-summary");
    bo.open("/#/t/" + group.id() + "/card");
    bo.until("the tick is gone", () -> bo.find(".card input[type=checkbox]").isSelected());
  }

  @Test
  void cardIsThereWithoutNetwork() {
    Screen asha = person().size(Screen.Size.PHONE);
    asha.open(group.address(group.link("asha"))).sees("If somebody does not come");
    asha.until(
        "the page is not kept",
        () ->
            Boolean.TRUE.equals(
                asha.run("return navigator.serviceWorker.controller?.state === 'activated'")));
    asha.clean();
    group.service.close();
    asha.open("/").sees("Who carries what");
    asha.open("/#/t/" + group.id() + "/card").sees("No connection. The card is as it was");
    asha.find(".card[data-hiker=asha]");
    asha.keep("offline");
    // Everything the service did not answer is on the console, as it should be.
    assertFalse(asha.traffic().complaints().isEmpty());
    asha.traffic().forget();
  }

  @Test
  void allCardsPrintTwoToASheet() {
    Screen leader = person();
    leader.open(group.address(group.leader)).sees("Over the two passes");
    leader.open("/#/t/" + group.id() + "/cards").sees("Without Bo:");
    leader.keep("all");
    assertEquals(3, leader.all(".card").size());
    // Three cards, two on a sheet.
    assertEquals(2, leader.pagesOnPaper("all-cards"));
  }

  @Test
  void messageIsThePlainText() {
    Screen bo = person();
    bo.open(group.address(group.link("bo"))).sees("If somebody does not come");
    bo.run("navigator.share = undefined");
    bo.press("Send as a message");
    String message = bo.find("#message").getDomProperty("value");
    assertTrue(message.startsWith("Bo: what you carry\nOver the two passes, 3 days\n"), message);
    assertTrue(message.contains("If somebody does not come"), message);
  }

  @Test
  void viewersSeeCardsWithoutRatios() {
    Screen viewer = person();
    viewer.open(group.address(group.link(""))).sees("Over the two passes");
    viewer.open("/#/t/" + group.id() + "/cards").sees("Without Bo:");
    for (String hiker : List.of("asha", "tomas")) {
      String card = viewer.find(".card[data-hiker=" + hiker + "] .card-mornings").getText();
      assertTrue(card.contains("within") || card.contains("above"), card);
      assertFalse(card.contains("%"), card);
      assertEquals(List.of(), viewer.all(".card[data-hiker=" + hiker + "] .target-mark"));
    }
    // Bo states a target load, which everybody may see, and so the part of it.
    assertTrue(viewer.find(".card[data-hiker=bo] .card-mornings").getText().contains("%"));
    viewer.open("/#/t/" + group.id() + "/ready").sees("Can we leave?");
    viewer.sees("the body mass is not shown to you");
    viewer.keep("ready");
  }
}
