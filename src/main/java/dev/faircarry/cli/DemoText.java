package dev.faircarry.cli;

/** What {@code serve} prints once it answers. */
final class DemoText {
  private DemoText() {}

  /** One line with the address; with links to a demo trip also what they are for. */
  static String listening(String host, Begun begun) {
    // An IPv6 address stands in brackets where a port follows (RFC 3986, 3.2.2).
    String named = host.contains(":") ? "[" + host + "]" : host;
    String origin = "http://" + named + ":" + begun.port();
    StringBuilder text = new StringBuilder("Listening on " + origin + "/\n");
    if (begun.links().isEmpty()) {
      return text.toString();
    }
    int width = begun.links().stream().mapToInt(link -> link.whose().length()).max().orElse(0);
    text.append("\nA made-up trip, divided and agreed on. Open it as one of these:\n\n");
    for (HandedLink link : begun.links()) {
      text.append("  ").append(link.whose()).append(" ".repeat(width - link.whose().length()));
      text.append("  ").append(origin).append(link.path()).append('\n');
    }
    text.append("\nCtrl+C ends it. Nothing is kept then, neither this trip nor any you make.\n");
    return text.toString();
  }
}
