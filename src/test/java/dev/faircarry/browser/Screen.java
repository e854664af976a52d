package dev.faircarry.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.WebDriverWait;

/** One person in front of one browser. Everything waits for a condition, and not forever. */
final class Screen {
  /** How long anything may take before the test gives up; passing does not depend on it. */
  private static final Duration END = Duration.ofSeconds(45);

  private static final Duration POLL = Duration.ofMillis(40);
  private static final Path KEPT = Path.of("target", "screenshots");

  /** Widths of the screens that are tried, in CSS pixels. */
  enum Size {
    PHONE(360, 740, true),
    LAPTOP(1280, 800, false);

    final int width;
    final int height;
    final boolean touch;

    Size(int width, int height, boolean touch) {
      this.width = width;
      this.height = height;
      this.touch = touch;
    }
  }

  /** What the person's system prefers. */
  enum Light {
    LIGHT,
    DARK
  }

  private final ChromeDriver driver;
  private final String origin;
  private final String test;
  private final Traffic traffic;

  Screen(ChromeDriver driver, String origin, String test) {
    this.driver = driver;
    this.origin = origin;
    this.test = test;
    this.traffic = new Traffic(driver);
    driver.get("about:blank");
    traffic.forget();
    size(Size.LAPTOP);
    light(Light.LIGHT);
  }

  ChromeDriver driver() {
    return driver;
  }

  Traffic traffic() {
    return traffic.read();
  }

  /** Opens an address of the service. */
  Screen open(String path) {
    driver.get(origin + path);
    return this;
  }

  Screen size(Size size) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of(
            "width", size.width,
            "height", size.height,
            "deviceScaleFactor", 1,
            "mobile", size.touch));
    return this;
  }

  Screen light(Light light) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "features",
            List.of(
                Map.of(
                    "name", "prefers-color-scheme", "value", light.name().toLowerCase(Locale.ROOT)),
                Map.of("name", "prefers-reduced-motion", "value", "reduce"))));
    return this;
  }

  /** Waits until something holds. */
  Screen until(String what, BooleanSupplier holds) {
    WebDriverWait wait = new WebDriverWait(driver, END, POLL);
    wait.ignoring(StaleElementReferenceException.class);
    wait.withMessage(() -> what + "; the page says: " + text());
    wait.until(unused -> holds.getAsBoolean());
    return this;
  }

  /** Waits until the page shows a text. */
  Screen sees(String text) {
    return until("no “" + text + "”", () -> text().contains(text));
  }

  /** Waits for a visible element. */
  WebElement find(String css) {
    until(
        "no " + css,
        () -> driver.findElements(By.cssSelector(css)).stream().anyMatch(WebElement::isDisplayed));
    return driver.findElements(By.cssSelector(css)).stream()
        .filter(WebElement::isDisplayed)
        .findFirst()
        .orElseThrow();
  }

  /** Presses the button or link with these words, those for screen readers included. */
  Screen press(String words) {
    until("no button “" + words + "”", () -> named(words).isPresent());
    named(words).orElseThrow().click();
    return this;
  }

  private Optional<WebElement> named(String words) {
    return driver.findElements(By.cssSelector("button, a, summary")).stream()
        .filter(each -> each.isDisplayed() && each.isEnabled() && wordsOf(each).equals(words))
        .findFirst();
  }

  private static String wordsOf(WebElement element) {
    return String.valueOf(element.getDomProperty("textContent")).strip().replaceAll("\\s+", " ");
  }

  /** The field for a place of the trip document. */
  WebElement field(String pointer) {
    return find("[data-pointer='" + pointer + "']");
  }

  /** Types a text into a field in place of what stands there, and keys after it. */
  Screen fill(String pointer, String text, Keys... after) {
    field(pointer)
        .sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE, text, String.join("", after));
    return this;
  }

  /** Waits until a field shows a text. */
  Screen shows(String pointer, String text) {
    return until(
        pointer + " does not show “" + text + "”",
        () -> text.equals(field(pointer).getDomProperty("value")));
  }

  /** Waits for the issue that is told at a field, and only there. */
  String issueAt(String pointer) {
    find("[data-pointer='" + pointer + "'][aria-invalid=true]");
    return String.valueOf(
        run(
            "return document.querySelector(arguments[0]).getAttribute('aria-describedby').split('"
                + " ').map(id => document.getElementById(id)).find(e =>"
                + " e.matches('.issue')).innerText",
            "[data-pointer='" + pointer + "']"));
  }

  /** Puts the cursor somewhere and pastes a text there, by way of the system's clipboard. */
  Screen paste(WebElement where, String text) {
    run(
        "const t = document.createElement('textarea'); t.id = 'clip'; t.value = arguments[0];"
            + " document.body.append(t); t.select()",
        text);
    driver.findElement(By.id("clip")).sendKeys(Keys.chord(Keys.CONTROL, "c"));
    run("document.getElementById('clip').remove()");
    where.sendKeys(Keys.chord(Keys.CONTROL, "v"));
    return this;
  }

  /** Prints the page to a file that is kept, and counts its pages. */
  int pagesOnPaper(String name) {
    Map<String, Object> printed =
        driver.executeCdpCommand(
            "Page.printToPDF", Map.of("preferCSSPageSize", true, "printBackground", false));
    byte[] pdf = Base64.getDecoder().decode(String.valueOf(printed.get("data")));
    try {
      Files.createDirectories(KEPT);
      Files.write(KEPT.resolve(test + "-" + name + ".pdf"), pdf);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    Matcher pages =
        Pattern.compile("/Type\\s*/Page\\b(?!s)")
            .matcher(new String(pdf, StandardCharsets.ISO_8859_1));
    return (int) pages.results().count();
  }

  /** All elements there are now. */
  List<WebElement> all(String css) {
    return driver.findElements(By.cssSelector(css));
  }

  /** The words of the page as it stands. */
  String text() {
    return String.valueOf(
        driver.executeScript("return document.body ? document.body.innerText : ''"));
  }

  /** Runs a script in the page. */
  Object run(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  /** Keeps a picture of the screen, in light and dark, and checks both for barriers. */
  Screen keep(String name) {
    for (Light light : new Light[] {Light.DARK, Light.LIGHT}) {
      light(light);
      picture(name + (light == Light.DARK ? "-dark" : ""));
      assertEquals(List.of(), Axe.violations(driver), name + " in " + light);
    }
    fits(name);
    return this;
  }

  /** Nothing is wider than the screen. */
  private void fits(String name) {
    long wide = (Long) run("return document.documentElement.scrollWidth");
    long screen = (Long) run("return document.documentElement.clientWidth");
    assertTrue(wide <= screen, name + " is " + wide + " px wide on a screen of " + screen + " px");
  }

  /** Keeps a picture of what is on the screen now. */
  void picture(String name) {
    try {
      Files.createDirectories(KEPT);
      Files.write(
          KEPT.resolve(test + "-" + name + ".png"), driver.getScreenshotAs(OutputType.BYTES));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** What must hold at the end of every test. */
  void clean() {
    traffic.read();
    assertEquals(List.of(), traffic.complaints(), "the console complains");
    assertEquals(
        List.of(),
        traffic.requests().stream().filter(url -> !url.startsWith(origin + "/")).toList(),
        "requests that leave the origin");
  }
}
