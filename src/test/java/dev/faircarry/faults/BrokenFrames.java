package dev.faircarry.faults;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.function.UnaryOperator;

/** Requests that do not follow HTTP. */
final class BrokenFrames {
  private BrokenFrames() {}

  private record Way(String name, UnaryOperator<String> broken) {}

  private static final Way[] WAYS = {
    new Way("length is no number", r -> length(r, "abc")),
    new Way("length below nothing", r -> length(r, "-1")),
    new Way("length beyond all bounds", r -> length(r, "99999999999999999999")),
    new Way("more announced than sent", r -> length(r, "1000000")),
    new Way("two lengths", r -> header(r, "Content-Length: 3\r\nContent-Length: 4")),
    new Way(
        "bad chunk",
        r -> length(r, "").replace("Content-Length: \r\n", "Transfer-Encoding: chunked\r\n")),
    new Way("unknown transfer", r -> header(r, "Transfer-Encoding: zipped")),
    new Way("length and chunks", r -> header(r, "Transfer-Encoding: chunked")),
    new Way("header without colon", r -> header(r, "no colon here")),
    new Way("space before colon", r -> header(r, "Accept : */*")),
    new Way("header without name", r -> header(r, ": x")),
    new Way("NUL in header", r -> header(r, "X-A: a\u0000b")),
    new Way("folded header", r -> header(r, "X-A: a\r\n b")),
    new Way("header too long", r -> header(r, "X-A: " + "a".repeat(20_000))),
    new Way("too many headers", r -> header(r, "X-A: a\r\n".repeat(3_000) + "X-B: b")),
    new Way("no host", r -> r.replaceFirst("Host: [^\r]*\r\n", "")),
    new Way("two hosts", r -> header(r, "Host: other")),
    new Way("bad host", r -> r.replaceFirst("Host: [^\r]*", "Host: a b:x")),
    new Way("address too long", r -> r.replaceFirst(" /", " /" + "a".repeat(20_000) + "/")),
    new Way("version 9.9", r -> r.replaceFirst("HTTP/1\\.1", "HTTP/9.9")),
    new Way("version 2.0", r -> r.replaceFirst("HTTP/1\\.1", "HTTP/2.0")),
    new Way("version in small", r -> r.replaceFirst("HTTP/1\\.1", "http/1.1")),
    new Way("version 1.0", r -> r.replaceFirst("HTTP/1\\.1", "HTTP/1.0")),
    new Way("no version", r -> r.replaceFirst(" HTTP/1\\.1", "")),
    new Way("absolute address", r -> r.replaceFirst(" /", " http://other.invalid/")),
    new Way("starred address", r -> r.replaceFirst(" /[^ ]*", " *")),
    new Way("address of an authority", r -> r.replaceFirst(" /[^ ]*", " other.invalid:80")),
    new Way("expects what is not", r -> header(r, "Expect: the-unexpected")),
    new Way("expects to go on", r -> header(r, "Expect: 100-continue")),
    new Way("other protocol", r -> header(r, "Connection: Upgrade\r\nUpgrade: websocket")),
    new Way("line ends only", r -> r.replace("\r\n", "\n")),
    new Way("empty lines first", r -> "\r\n\r\n" + r),
    new Way("one word", r -> "GET\r\n\r\n"),
    new Way("prior knowledge", r -> "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n"),
    new Way(
        "another protocol's greeting",
        r -> "\u0016\u0003\u0001\u0002\u0000\u0001\u0000\u0001\u00fc\u0003\u0003" + r),
    new Way("noise", r -> "\u00ff\u00fe\u0001\u0000".repeat(50) + "\r\n\r\n"),
    new Way("half a request", r -> r.substring(0, r.length() / 2)),
  };

  static Malformed of(String request, Random random) {
    Way way = WAYS[random.nextInt(WAYS.length)];
    byte[] bytes = way.broken().apply(request).getBytes(StandardCharsets.ISO_8859_1);
    return new Malformed(way.name(), bytes, false, false);
  }

  private static String header(String request, String line) {
    return request.replaceFirst(
        "\r\n", "\r\n" + java.util.regex.Matcher.quoteReplacement(line) + "\r\n");
  }

  private static String length(String request, String length) {
    String without = request.replaceFirst("Content-Length: [0-9]*\r\n", "");
    return header(without, "Content-Length: " + length);
  }
}
