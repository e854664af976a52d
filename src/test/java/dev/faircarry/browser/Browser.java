package dev.faircarry.browser;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.extension.AfterTestExecutionCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Gives a test its screens, and holds every one of them to this at the end: no error on the
 * console, nothing refused by the content security policy, no request that left the service.
 */
final class Browser implements BeforeEachCallback, AfterTestExecutionCallback {
  private final List<Screen> screens = new ArrayList<>();
  private String test = "";

  @Override
  public void beforeEach(ExtensionContext context) {
    screens.clear();
    test =
        context.getRequiredTestClass().getSimpleName()
            + "-"
            + context.getRequiredTestMethod().getName();
  }

  /** The next person's screen: a browser with storage of its own. */
  Screen person(int port) {
    Screen screen = new Screen(Chromium.of(screens.size()), "http://127.0.0.1:" + port, test);
    screens.add(screen);
    return screen;
  }

  @Override
  public void afterTestExecution(ExtensionContext context) {
    if (context.getExecutionException().isPresent()) {
      for (int i = 0; i < screens.size(); i++) {
        screens.get(i).picture("failed-" + i);
      }
      return;
    }
    screens.forEach(Screen::clean);
  }
}
