package dev.faircarry.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import dev.faircarry.http.OpenTrip;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;

/** Links are handed from screen to phone: the square code is read by a library of somebody else. */
@Tag("slow")
class LinksTest {
  /** Each owner carries their own: equal loads, and the owner's hands come first among equals. */
  private static final String TRIP =
      """
      {"format": "faircarry-trip/1", "name": "Out and back", "days": 1,
       "hikers": [
         {"id": "ada", "name": "Ada", "bodyMass": "60 kg"},
         {"id": "ben", "name": "Ben", "targetLoad": "12 kg"}],
       "shared": [
         {"id": "rope", "name": "Rope", "mass": "2 kg", "owner": "ada"},
         {"id": "tent", "name": "Tent", "mass": "2 kg", "owner": "ben"}]}
      """;

  @RegisterExtension final Browser browser = new Browser();
  @TempDir private Path directory;
  private OpenTrip trip;

  @BeforeEach
  void start() throws IOException {
    trip = new OpenTrip(directory, TRIP);
  }

  @AfterEach
  void end() {
    trip.close();
  }

  /** What the code on the screen says. */
  private static String decoded(Screen screen) {
    screen.find("svg.code path");
    WebElement code = screen.find("svg.code");
    screen.run("arguments[0].scrollIntoView({block: 'center'})", code);
    try {
      BufferedImage seen =
          ImageIO.read(new ByteArrayInputStream(code.getScreenshotAs(OutputType.BYTES)));
      int width = seen.getWidth();
      int height = seen.getHeight();
      int[] pixels = seen.getRGB(0, 0, width, height, null, 0, width);
      return new QRCodeReader()
          .decode(
              new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, pixels))))
          .getText();
    } catch (IOException | ReaderException e) {
      screen.picture("unreadable");
      throw new AssertionError(e);
    }
  }

  /** With Ben at home, Ada has to take what he had, and there is no other way. */
  @Test
  void codeOfAHikersLinkLeadsToTheCard() {
    Screen leader = browser.person(trip.port()).open(trip.leaderLink()).sees("own kit");
    leader.open(trip.screen("links")).press("Make a link for Ada").sees("For Ada");
    String link = String.valueOf(leader.find(".fresh input").getDomProperty("value"));
    assertTrue(link.startsWith("http://127.0.0.1:" + trip.port() + "/#/open/"), link);
    assertEquals(link, decoded(leader));
    leader.keep("laptop");
    leader.size(Screen.Size.PHONE).light(Screen.Light.DARK);
    assertEquals(link, decoded(leader));
    leader.light(Screen.Light.LIGHT).keep("phone");

    Screen ada = browser.person(trip.port()).size(Screen.Size.PHONE);
    ada.open(decoded(leader).replaceFirst("^http://[^/]*", "")).sees("Your card");
    ada.sees("Without Ben:").sees("take Tent.").sees("Rope").keep("card");
  }

  /** The link a hiker makes to keep a body mass private is another one than was handed out. */
  @Test
  void codeOfAnOwnLinkIsItself() {
    String handed = trip.link("ada");
    Screen ada = browser.person(trip.port()).open(handed).sees("Your card");
    ada.open(trip.screen("me")).press("Keep my body mass private");
    ada.sees("Your body mass is private");
    String link = String.valueOf(ada.find("#own-link").getDomProperty("value"));
    assertEquals(link, decoded(ada));
    assertNotEquals(handed, link.replaceFirst("^http://[^/]*", ""));
    Screen other = browser.person(trip.port()).open(link.replaceFirst("^http://[^/]*", ""));
    other.sees("Your card").open(trip.screen("me")).shows("/hikers/0/bodyMass", "60 kg");
  }
}
