package dev.faircarry.http;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The files of the page, read once. All of them stand under one address that holds a hash of their
 * contents, so that a browser may keep each for ever and yet never mixes two versions.
 */
final class PageFiles {
  private static final String ROOT = "/page";
  private static final String WORKER = "worker.js";

  /** What of the template library the page uses. */
  private static final List<String> TEMPLATES =
      List.of(
          "lit-html.js",
          "directive.js",
          "directive-helpers.js",
          "directives/live.js",
          "directives/ref.js",
          "directives/repeat.js",
          "async-directive.js");

  private static final Map<String, String> KINDS =
      Map.of(
          ".js", "text/javascript; charset=utf-8",
          ".css", "text/css; charset=utf-8",
          ".svg", "image/svg+xml",
          ".webmanifest", "application/manifest+json",
          ".html", "text/html; charset=utf-8");

  private final SortedMap<String, byte[]> files = new TreeMap<>();
  private final String version;

  /**
   * @param templatesVersion version of the bundled template library
   */
  PageFiles(String templatesVersion) {
    own();
    String webJar = "/META-INF/resources/webjars/lit-html/" + templatesVersion + "/";
    for (String name : TEMPLATES) {
      files.put(name, Bundled.file(webJar + name));
    }
    version = hash();
  }

  /** Twelve hexadecimal digits that change with any of the files. */
  String version() {
    return version;
  }

  /** Names of all files but the documents a browser asks for by other addresses. */
  List<String> names() {
    return files.keySet().stream()
        .filter(name -> !name.endsWith(".html") && !name.equals(WORKER))
        .toList();
  }

  /** The bytes of a file that is there. */
  byte[] bytes(String name) {
    byte[] bytes = files.get(name);
    if (bytes == null) {
      throw new IllegalStateException("the page lacks " + name);
    }
    return bytes;
  }

  /** The same as text, with the address of the files in place of {@code @page@}. */
  String text(String name) {
    return new String(bytes(name), StandardCharsets.UTF_8).replace("@page@", "/page/" + version);
  }

  /** The document that starts the page. */
  String start() {
    StringBuilder styles = new StringBuilder();
    StringBuilder modules = new StringBuilder();
    for (String name : names()) {
      if (name.endsWith(".css")) {
        styles.append("<link rel=\"stylesheet\" href=\"@page@/").append(name).append("\">\n");
      } else if (name.startsWith("core/") || TEMPLATES.contains(name)) {
        modules.append("<link rel=\"modulepreload\" href=\"@page@/").append(name).append("\">\n");
      }
    }
    return text("index.html")
        .replace("<!-- @styles@ -->\n", styles)
        .replace("<!-- @modules@ -->\n", modules)
        .replace("@page@", "/page/" + version);
  }

  /** The script that keeps the page for where there is no network, with the names of its files. */
  String worker() {
    String at = "/page/" + version + "/";
    return text(WORKER)
        .replace("@version@", version)
        .replace(
            "/* @files@ */",
            names().stream().map(name -> '"' + at + name + '"').collect(Collectors.joining(", ")));
  }

  /** Media type by the ending of a name. */
  static String kind(String name) {
    String ending = name.substring(name.lastIndexOf('.'));
    String kind = KINDS.get(ending);
    if (kind == null) {
      throw new IllegalStateException("the page has a file of an unknown kind: " + name);
    }
    return kind;
  }

  private void own() {
    try {
      URI place = PageFiles.class.getResource(ROOT + "/index.html").toURI();
      if (place.getScheme().equals("jar")) {
        try (FileSystem jar = FileSystems.newFileSystem(place, Map.of())) {
          read(jar.getPath(ROOT));
        }
      } else {
        read(Path.of(place.resolve(".")));
      }
    } catch (URISyntaxException e) {
      throw new IllegalStateException("the page has no readable place", e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void read(Path root) throws IOException {
    try (Stream<Path> paths = Files.walk(root)) {
      for (Path path : paths.filter(Files::isRegularFile).toList()) {
        String name = root.relativize(path).toString().replace('\\', '/');
        files.put(name, Files.readAllBytes(path));
      }
    }
  }

  private String hash() {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      files.forEach(
          (name, bytes) -> {
            digest.update((name + "\n" + bytes.length + "\n").getBytes(StandardCharsets.UTF_8));
            digest.update(bytes);
          });
      return HexFormat.of().formatHex(digest.digest()).substring(0, 12);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
