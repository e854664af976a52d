package dev.faircarry.kit;

import java.util.Locale;

/**
 * Writes one SVG 1.1 picture. It stands for itself: no script, no font, no address outside. Colours
 * for light paper are attributes; a style sheet changes them where dark is wanted, so that without
 * it the picture is still readable on its own light ground.
 */
final class Svg {
  private static final String STYLE =
      "@media (prefers-color-scheme: dark) {"
          + ".ground{fill:#15181c}.ink{fill:#e8e8e4}.quiet{fill:#a9adb3}.line{stroke:#e8e8e4}.faint{stroke:#4a4f57}"
          + ".over{fill:#ff9d6b;stroke:#ff9d6b}.under{fill:#15181c;stroke:#8fb8d8}.stem-under{stroke:#8fb8d8}"
          + ".bar{fill:#7fa7c7}}";

  private final StringBuilder body = new StringBuilder();

  /** What the eye sees, with the colour it has on light paper. */
  enum Look {
    INK("ink", "#1c1f24", false),
    QUIET("quiet", "#5b6169", false),
    OVER("over", "#b8430d", false),
    UNDER("under", "#fdfdfb", false),
    BAR("bar", "#4a7fa8", false),
    LINE("line", "#1c1f24", true),
    FAINT("faint", "#c9cdd2", true),
    STEM_UNDER("stem-under", "#3f6f96", true);

    private final String name;
    private final String colour;
    private final boolean stroke;

    Look(String name, String colour, boolean stroke) {
      this.name = name;
      this.colour = colour;
      this.stroke = stroke;
    }

    String attributes() {
      return stroke
          ? "class=\"" + name + "\" stroke=\"" + colour + "\""
          : "class=\"" + name + "\" fill=\"" + colour + "\"";
    }
  }

  /** Where a text stands on its point. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }

  void text(int x, int y, Anchor anchor, int size, Look look, String text) {
    body.append(
        "<text x=\"%d\" y=\"%d\" text-anchor=\"%s\" font-size=\"%d\" %s>%s</text>\n"
            .formatted(
                x,
                y,
                anchor.name().toLowerCase(Locale.ROOT),
                size,
                look.attributes(),
                escaped(text)));
  }

  void line(int x1, int y1, int x2, int y2, int width, Look look) {
    body.append(
        "<line x1=\"%d\" y1=\"%d\" x2=\"%d\" y2=\"%d\" stroke-width=\"%d\" %s/>\n"
            .formatted(x1, y1, x2, y2, width, look.attributes()));
  }

  void dot(int x, int y, int radius, Look look) {
    String stroke = look == Look.UNDER ? " stroke=\"#3f6f96\" stroke-width=\"2\"" : "";
    body.append(
        "<circle cx=\"%d\" cy=\"%d\" r=\"%d\" %s%s/>\n"
            .formatted(x, y, radius, look.attributes(), stroke));
  }

  void bar(int x, int y, int width, int height, Look look) {
    body.append(
        "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" %s/>\n"
            .formatted(x, y, width, height, look.attributes()));
  }

  /**
   * The whole picture.
   *
   * @param title what it shows, read out first
   * @param description what it says, for those who do not see it
   */
  String picture(int width, int height, String title, String description) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%d\" role=\"img\" aria-labelledby=\"title description\" font-family=\"system-ui, sans-serif\">\n"
            .formatted(width, height, width, height)
        + "<title id=\"title\">"
        + escaped(title)
        + "</title>\n<desc id=\"description\">"
        + escaped(description)
        + "</desc>\n<style>"
        + STYLE
        + "</style>\n"
        + "<rect class=\"ground\" fill=\"#fdfdfb\" width=\"%d\" height=\"%d\"/>\n"
            .formatted(width, height)
        + body
        + "</svg>\n";
  }

  /** Text that cannot end its element, whatever somebody called a hiker. */
  static String escaped(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '&' -> out.append("&amp;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(allowed(c) ? c : 0xFFFD);
              }
            });
    return out.toString();
  }

  /** Characters of XML 1.0, section 2.2. */
  private static boolean allowed(int c) {
    return c == 0x9
        || c == 0xA
        || c == 0xD
        || (c >= 0x20 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD)
        || c >= 0x10000;
  }

  /** A name in at most so many characters, kept apart from the direction of the text around it. */
  static String name(String name, int most) {
    int[] points = name.codePoints().toArray();
    String cut =
        points.length <= most ? name : new String(points, 0, Math.max(0, most - 1)) + "\u2026";
    return "\u2068" + cut + "\u2069";
  }
}
