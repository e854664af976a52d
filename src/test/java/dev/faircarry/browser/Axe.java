package dev.faircarry.browser;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.openqa.selenium.JavascriptExecutor;

/** Asks axe-core what in the page would keep people out. */
final class Axe {
  private static final Set<String> TOLD = Set.of("serious", "critical");
  private static final String SCRIPT = script();
  private static final String RUN =
      """
      const done = arguments[arguments.length - 1];
      axe.run(document, {resultTypes: ["violations"]}).then(
        found => done(found.violations.map(v => ({
          impact: v.impact,
          words: v.id + ": " + v.help + " " + v.nodes.map(n => n.html + " " + n.failureSummary).join(" | ")
        }))),
        fault => done([{impact: "critical", words: "axe failed: " + fault}]));
      """;

  private Axe() {}

  /** Serious and critical violations of the page shown now, in words. */
  static List<String> violations(JavascriptExecutor browser) {
    browser.executeScript(SCRIPT);
    Object found = browser.executeAsyncScript(RUN);
    return ((List<?>) found)
        .stream()
            .map(each -> (Map<?, ?>) each)
            .filter(each -> TOLD.contains(each.get("impact")))
            .map(each -> String.valueOf(each.get("words")))
            .toList();
  }

  private static String script() {
    try (InputStream in = Axe.class.getResourceAsStream("/axe.min.js")) {
      if (in == null) {
        throw new AssertionError("the tests lack axe.min.js");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
