package dev.faircarry.http;

/** A plain page: no scripts, one style sheet, everything escaped. */
final class Page {
  private final StringBuilder body = new StringBuilder();
  private final String title;

  Page(String title) {
    this.title = title;
    element("h1", title);
  }

  /** An element with text in it. */
  Page element(String name, String text) {
    body.append('<').append(name).append('>').append(escaped(text));
    body.append("</").append(name).append(">\n");
    return this;
  }

  /** A heading that an address can point at. */
  Page anchor(String id, String text) {
    body.append("<h2 id=\"").append(escaped(id)).append("\">").append(escaped(text));
    body.append("</h2>\n");
    return this;
  }

  /** A paragraph that is a link. */
  Page link(String address, String text) {
    body.append("<p><a href=\"").append(escaped(address)).append("\">").append(escaped(text));
    body.append("</a></p>\n");
    return this;
  }

  /** Text with its line ends. */
  Page code(String text) {
    body.append("<pre><code>").append(escaped(text)).append("</code></pre>\n");
    return this;
  }

  String html() {
    return "<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>"
        + escaped(title)
        + "</title>\n<link rel=\"stylesheet\" href=\"/assets/page.css\">\n</head>\n<body>\n<main>\n"
        + body
        + "</main>\n</body>\n</html>\n";
  }

  static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }
}
