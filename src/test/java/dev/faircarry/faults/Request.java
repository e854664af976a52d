package dev.faircarry.faults;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A request, as it goes over the wire.
 *
 * @param headers name and value, one after the other
 */
record Request(String method, String target, List<String> headers, byte[] body) {
  static Request of(String method, String target) {
    return new Request(method, target, List.of(), new byte[0]);
  }

  Request with(String name, String value) {
    List<String> more = new ArrayList<>(headers);
    more.add(name);
    more.add(value);
    return new Request(method, target, List.copyOf(more), body);
  }

  /** With a JSON body, or a merge patch. */
  Request json(String text) {
    String kind = method.equals("PATCH") ? "application/merge-patch+json" : "application/json";
    Request request = with("Content-Type", kind);
    return new Request(method, target, request.headers(), text.getBytes(StandardCharsets.UTF_8));
  }

  Request bearer(String token) {
    return with("Authorization", "Bearer " + token);
  }

  Request ifMatch(int revision) {
    return with("If-Match", "\"" + revision + ".\"");
  }

  byte[] bytes() {
    StringBuilder head = new StringBuilder();
    head.append(method).append(' ').append(target).append(" HTTP/1.1\r\nHost: 127.0.0.1\r\n");
    for (int i = 0; i < headers.size(); i += 2) {
      head.append(headers.get(i)).append(": ").append(headers.get(i + 1)).append("\r\n");
    }
    if (body.length > 0 || !method.equals("GET")) {
      head.append("Content-Length: ").append(body.length).append("\r\n");
    }
    byte[] first = head.append("\r\n").toString().getBytes(StandardCharsets.ISO_8859_1);
    byte[] all = new byte[first.length + body.length];
    System.arraycopy(first, 0, all, 0, first.length);
    System.arraycopy(body, 0, all, first.length, body.length);
    return all;
  }
}
