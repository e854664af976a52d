package dev.faircarry.http;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The files of the page as a browser asks for them. */
@ExtendWith(RunningService.class)
class PageRoutesTest {
  private static final Pattern REFERENCE = Pattern.compile("(?:href|src)=\"(/page/[^\"]+)\"");
  private static final Pattern IMPORT =
      Pattern.compile("(?:from|import)\\s*\\(?\\s*['\"](\\.{1,2}/[^'\"]+)['\"]");

  private static String start() {
    return RunningService.request().get("/").then().statusCode(200).extract().asString();
  }

  /** Every file that the page can come to ask for, by following references and imports. */
  private static Set<String> reachable(String start) {
    Deque<String> open = new ArrayDeque<>();
    Matcher references = REFERENCE.matcher(start);
    while (references.find()) {
      open.add(references.group(1));
    }
    Set<String> seen = new LinkedHashSet<>();
    while (!open.isEmpty()) {
      String path = open.remove();
      if (!seen.add(path)) {
        continue;
      }
      String text =
          RunningService.request()
              .get(path)
              .then()
              .statusCode(200)
              .header("Cache-Control", "public, max-age=31536000, immutable")
              .header("X-Content-Type-Options", "nosniff")
              .extract()
              .asString();
      Matcher imports = IMPORT.matcher(path.endsWith(".js") ? text : "");
      while (imports.find()) {
        open.add(java.net.URI.create(path).resolve(imports.group(1)).toString());
      }
    }
    return seen;
  }

  @Test
  void everythingThePageAsksForIsThere() {
    Set<String> files = reachable(start());
    assertTrue(files.stream().anyMatch(f -> f.endsWith("/lit-html.js")), files.toString());
    assertTrue(files.stream().anyMatch(f -> f.endsWith("/screens/loads.js")), files.toString());
  }

  @Test
  void documentHasNoInlineScriptOrStyle() {
    String start = start();
    assertFalse(start.contains("<style") || start.contains("style="), start);
    assertFalse(Pattern.compile("<script(?![^>]* src=)").matcher(start).find(), start);
    assertFalse(start.contains("@page@") || start.contains("http:"), start);
    String policy = RunningService.request().get("/").header("Content-Security-Policy");
    assertTrue(policy.contains("script-src 'self';"), policy);
  }

  /** The limit is 200 kB of what is asked for before anything is pressed; all files stay below. */
  @Test
  void pageIsSmall() {
    int compressed = 0;
    for (String path : reachable(start())) {
      compressed += gzipped(RunningService.request().get(path).asByteArray());
    }
    assertTrue(compressed < 200_000, compressed + " bytes");
  }

  @Test
  void filesTravelCompressed() {
    String script = reachable(start()).stream().filter(f -> f.endsWith("/app.js")).findAny().get();
    RunningService.request()
        .header("Accept-Encoding", "gzip")
        .get(script)
        .then()
        .statusCode(200)
        .header("Content-Encoding", equalTo("gzip"));
  }

  @Test
  void otherVersionsAndOtherFilesAreNotThere() {
    String script = reachable(start()).stream().filter(f -> f.endsWith("/app.js")).findAny().get();
    String version = script.split("/", -1)[2];
    assertEquals(12, version.length());
    for (String path :
        new String[] {
          "/page/000000000000/app.js",
          "/page/" + version + "/index.html",
          "/page/" + version + "/nothing.js",
          "/page/" + version + "/core/../../logback.xml"
        }) {
      RunningService.request().get(path).then().statusCode(404).body("code", equalTo("not-found"));
    }
  }

  private static int gzipped(byte[] bytes) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
      gzip.write(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.size();
  }
}
