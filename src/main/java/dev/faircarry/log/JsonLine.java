package dev.faircarry.log;

/** A JSON object on one line (RFC 8259), written field by field. */
final class JsonLine {
  private final StringBuilder text = new StringBuilder("{");

  void add(String name, String value) {
    name(name);
    quoted(value);
  }

  void add(String name, long value) {
    name(name);
    text.append(value);
  }

  private void name(String name) {
    if (text.length() > 1) {
      text.append(',');
    }
    quoted(name);
    text.append(':');
  }

  private void quoted(String value) {
    text.append('"');
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      if (c == '"' || c == '\\') {
        text.append('\\').append(c);
      } else if (c < ' ' || c == '\u2028' || c == '\u2029' || Character.isSurrogate(c)) {
        // Surrogates too: half a pair would not be UTF-8.
        text.append(String.format("\\u%04x", (int) c));
      } else {
        text.append(c);
      }
    }
    text.append('"');
  }

  String text() {
    return text + "}";
  }
}
