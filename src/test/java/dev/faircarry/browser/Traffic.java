package dev.faircarry.browser;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.logging.Level;
import java.util.regex.Pattern;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogEntry;

/** What a browser asked for, got and complained about, read from its own log. */
final class Traffic {
  private static final JsonMapper JSON = new JsonMapper();

  /** A refusal by the API is an answer like any other, but the browser reports it as an error. */
  private static final Pattern REFUSED =
      Pattern.compile("/v1/\\S* - Failed to load resource: .* status of 4\\d\\d");

  private static final Set<String> NO_NETWORK = Set.of("data", "blob", "about");

  private final ChromeDriver driver;
  private final List<String> requests = new ArrayList<>();
  private final List<String> complaints = new ArrayList<>();
  private final List<String> bodies = new ArrayList<>();
  private final List<String> sent = new ArrayList<>();
  private final Map<String, String> urls = new HashMap<>();
  private long encodedBytes;

  Traffic(ChromeDriver driver) {
    this.driver = driver;
  }

  /** Reads what happened since the last reading. */
  Traffic read() {
    driver.manage().logs().get("performance").forEach(entry -> event(entry.getMessage()));
    for (LogEntry entry : driver.manage().logs().get("browser")) {
      if (entry.getLevel().equals(Level.SEVERE) && !REFUSED.matcher(entry.getMessage()).find()) {
        complaints.add(entry.getMessage());
      }
    }
    return this;
  }

  /** Forgets everything so far. */
  void forget() {
    read();
    requests.clear();
    complaints.clear();
    bodies.clear();
    sent.clear();
    encodedBytes = 0;
  }

  /** Addresses asked for, in order. */
  List<String> requests() {
    return List.copyOf(requests);
  }

  /** Errors of the console, uncaught exceptions, and what a policy refused. */
  List<String> complaints() {
    return List.copyOf(complaints);
  }

  /** Bodies of the answers, as far as the browser still has them. */
  List<String> bodies() {
    return List.copyOf(bodies);
  }

  /** Bodies that were sent to addresses with such a part, each behind its address. */
  List<String> sent(String part) {
    return sent.stream()
        .filter(each -> each.substring(0, each.indexOf(' ')).contains(part))
        .toList();
  }

  /** Bytes of all answers as they came over the wire, headers included. */
  long encodedBytes() {
    return encodedBytes;
  }

  private void event(String line) {
    JsonNode message;
    try {
      message = JSON.readTree(line).path("message");
    } catch (IOException e) {
      throw new AssertionError(line, e);
    }
    JsonNode about = message.path("params");
    switch (message.path("method").asText()) {
      case "Network.requestWillBeSent" -> request(about);
      case "Network.loadingFinished" -> finished(about);
      default -> {}
    }
  }

  private void request(JsonNode about) {
    String url = about.path("request").path("url").asText();
    urls.put(about.path("requestId").asText(), url);
    if (!NO_NETWORK.contains(url.substring(0, Math.max(0, url.indexOf(':'))))) {
      requests.add(url);
      String body = about.path("request").path("postData").asText();
      if (!body.isEmpty()) {
        sent.add(url + " " + body);
      }
    }
  }

  private void finished(JsonNode about) {
    encodedBytes += about.path("encodedDataLength").asLong();
    String id = about.path("requestId").asText();
    if (!urls.getOrDefault(id, "").contains("/v1/")) {
      return;
    }
    try {
      Map<String, Object> body =
          driver.executeCdpCommand("Network.getResponseBody", Map.of("requestId", id));
      String text = String.valueOf(body.get("body"));
      bodies.add(
          Boolean.TRUE.equals(body.get("base64Encoded"))
              ? new String(Base64.getDecoder().decode(text), StandardCharsets.UTF_8)
              : text);
    } catch (WebDriverException e) {
      // A page that was left takes its answers with it.
      bodies.add("");
    }
  }
}
