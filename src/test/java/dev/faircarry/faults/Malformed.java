package dev.faircarry.faults;

import dev.faircarry.faults.Operations.Operation;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Random;

/**
 * Requests that are wrong in one way each, made from those the contract describes.
 *
 * @param head whether the answer has no body
 * @param framed whether it is HTTP at all, so that the connection can be used again
 */
record Malformed(String way, byte[] bytes, boolean head, boolean framed) {
  private static final String[] HEADERS = {
    "Content-Type: text/plain",
    "Content-Type: application/json; charset=utf-16",
    "Content-Type: ,;=",
    "Content-Type: */*",
    "Content-Encoding: gzip",
    "Accept: application/xml",
    "Accept: ;q=x,,/",
    "Accept: text/event-stream",
    "Accept: application/json;q=0",
    "Accept-Encoding: gzip;q=-1",
    "If-Match: x",
    "If-Match: \"99999999999.\"",
    "If-Match: \"0\"",
    "If-Match: W/\"1.\"",
    "If-Match: \"",
    "If-None-Match: *, *",
    "Idempotency-Key: ",
    "Idempotency-Key: \u00e9",
    "Authorization: Bearer",
    "Authorization: Bearer x.y",
    "Authorization: Basic eDp5",
    "Authorization: Bearer \u00ff\u00ff",
    "Prefer: wait=99999999999999",
    "Prefer: wait=-1",
    "Prefer: ;;wait==",
    "Range: bytes=0-0,5-1",
    "X-Request-Id: \u00e9 {}",
    "traceparent: 00-zz-zz-zz",
    "Last-Event-ID: -1",
    "Origin: null",
    "Access-Control-Request-Method: \\",
    "Cookie: a=\"",
    "X-Forwarded-For: ,,",
    "X-Forwarded-Host: :::",
    "Forwarded: for=\"",
    "TE: x",
    "Referer: %%%",
    "X-Http-Method-Override: DELETE"
  };
  private static final String[] PARTS = {
    "%2e%2e",
    "..",
    ".",
    "%2F",
    "%00",
    "%zz",
    "%",
    "%ff%fe",
    ";x=y",
    "a".repeat(2_000),
    "%F0%9F%A6%8A",
    "\u00e9",
    "'",
    "{trip}",
    "-1",
    "99999999999999999999",
    "%20",
    "a%0d%0ab",
    "\\",
    "*",
    "null"
  };
  private static final String[] VALUES = {
    "",
    "-1",
    "0",
    "1.5",
    "x",
    "99999999999999999999",
    "%",
    "%zz",
    "%ff",
    "null",
    "true",
    "a".repeat(5_000),
    "1&1",
    "1;2",
    "%00",
    "%0d%0a",
    "[]",
    "1e3"
  };
  private static final String[] METHODS = {
    "PUT",
    "PATCH",
    "DELETE",
    "POST",
    "HEAD",
    "OPTIONS",
    "TRACE",
    "CONNECT",
    "get",
    "QUERY",
    "PROPFIND",
    "X".repeat(200),
    "G-T"
  };

  /** One request; the same for the same random numbers. */
  static Malformed of(
      Operation operation, Map<String, String> values, String token, Random random) {
    String target = operation.target(values);
    Request good = new Request(operation.method(), target, java.util.List.of(), new byte[0]);
    good = good.bearer(token);
    if (!operation.method().equals("GET")) {
      good = good.with("If-Match", "*").with("Prefer", "wait=1");
    }
    byte[] body =
        operation.takesBody()
            ? Editor.utf8(
                operation.bodies().get(random.nextInt(operation.bodies().size())).toString())
            : new byte[0];
    if (operation.takesBody() && random.nextInt(10) < 5) {
      byte[] broken =
          new BrokenBodies(random)
              .broken(operation.bodies().get(random.nextInt(operation.bodies().size())));
      return framed("body", withBody(good, operation, target + effort(operation), broken));
    }
    switch (random.nextInt(5)) {
      case 0 -> {
        String[] header = HEADERS[random.nextInt(HEADERS.length)].split(": ?", 2);
        return framed(
            "header " + header[0],
            withBody(good, operation, target + effort(operation), body).with(header[0], header[1]));
      }
      case 1 -> {
        String part = PARTS[random.nextInt(PARTS.length)];
        String[] steps = target.split("/", -1);
        steps[1 + random.nextInt(steps.length - 1)] = part;
        String other = random.nextInt(4) == 0 ? target + "/" + part : String.join("/", steps);
        return framed("path", withBody(good, operation, other, body));
      }
      case 2 -> {
        int known = random.nextInt(operation.query().size() + 1);
        String name = known < operation.query().size() ? operation.query().get(known) : "unheard";
        String value = VALUES[random.nextInt(VALUES.length)];
        String twice = random.nextInt(5) == 0 ? "&" + name + "=1" : "";
        return framed(
            "query " + name,
            withBody(good, operation, target + "?" + name + "=" + value + twice, body));
      }
      case 3 -> {
        String method = METHODS[random.nextInt(METHODS.length)];
        Request request = withBody(good, operation, target, body);
        request = new Request(method, target, request.headers(), request.body());
        return new Malformed(
            "method " + method, request.bytes(), method.equals("HEAD"), !method.equals("CONNECT"));
      }
      default -> {
        byte[] whole = withBody(good, operation, target + effort(operation), body).bytes();
        return BrokenFrames.of(new String(whole, StandardCharsets.ISO_8859_1), random);
      }
    }
  }

  private static String effort(Operation operation) {
    return operation.query().contains("effort") ? "?effort=1000" : "";
  }

  private static Request withBody(
      Request request, Operation operation, String target, byte[] body) {
    Request typed =
        operation.takesBody() ? request.with("Content-Type", operation.kind()) : request;
    return new Request(request.method(), target, typed.headers(), body);
  }

  private static Malformed framed(String way, Request request) {
    return new Malformed(way, request.bytes(), false, true);
  }

  @Override
  public String toString() {
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    return way + ":\n" + (text.length() > 1_500 ? text.substring(0, 1_500) + "..." : text);
  }
}
