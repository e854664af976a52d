package dev.faircarry.log;

import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.IThrowableProxy;
import ch.qos.logback.classic.spi.StackTraceElementProxy;
import ch.qos.logback.core.encoder.EncoderBase;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.slf4j.event.KeyValuePair;

/**
 * Writes each event of the log as one line, for people or as a JSON object. Of exceptions only
 * kinds and places are written: their messages may quote a document.
 */
public final class LineEncoder extends EncoderBase<ILoggingEvent> {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
          .withZone(ZoneOffset.UTC);
  private static final int MOST_FRAMES = 40;

  private static volatile boolean json;

  /** Chooses the form for the whole program: JSON objects, or text. */
  public static void useJson(boolean on) {
    json = on;
  }

  @Override
  public byte[] headerBytes() {
    return new byte[0];
  }

  @Override
  public byte[] footerBytes() {
    return new byte[0];
  }

  @Override
  public byte[] encode(ILoggingEvent event) {
    String line = json ? asJson(event) : asText(event);
    return (line + "\n").getBytes(StandardCharsets.UTF_8);
  }

  static String asText(ILoggingEvent event) {
    StringBuilder line = new StringBuilder(time(event));
    line.append(' ').append(event.getLevel()).append(' ').append(shortName(event));
    new TreeMap<>(event.getMDCPropertyMap())
        .forEach((name, value) -> line.append(' ').append(name).append('=').append(value));
    line.append(' ').append(oneLine(event.getFormattedMessage()));
    for (String frame : frames(event)) {
      line.append(" | ").append(frame);
    }
    return line.toString();
  }

  static String asJson(ILoggingEvent event) {
    JsonLine line = new JsonLine();
    line.add("time", time(event));
    line.add("level", event.getLevel().toString());
    line.add("logger", shortName(event));
    new TreeMap<>(event.getMDCPropertyMap()).forEach(line::add);
    line.add("message", event.getFormattedMessage());
    List<KeyValuePair> pairs = event.getKeyValuePairs();
    if (pairs != null) {
      for (KeyValuePair pair : pairs) {
        if (pair.value instanceof Number number) {
          line.add(pair.key, number.longValue());
        } else {
          line.add(pair.key, String.valueOf(pair.value));
        }
      }
    }
    List<String> frames = frames(event);
    if (!frames.isEmpty()) {
      line.add("exception", String.join(" | ", frames));
    }
    return line.text();
  }

  private static String time(ILoggingEvent event) {
    return TIME.format(Instant.ofEpochMilli(event.getTimeStamp()));
  }

  private static String shortName(ILoggingEvent event) {
    String name = event.getLoggerName();
    return name.substring(name.lastIndexOf('.') + 1);
  }

  /** Kinds of the exception and of its causes, and where the first came from. */
  private static List<String> frames(ILoggingEvent event) {
    List<String> frames = new java.util.ArrayList<>();
    IThrowableProxy thrown = event.getThrowableProxy();
    if (thrown == null) {
      return frames;
    }
    for (IThrowableProxy each = thrown; each != null; each = each.getCause()) {
      frames.add(each.getClassName());
    }
    StackTraceElementProxy[] trace = thrown.getStackTraceElementProxyArray();
    for (int i = 0; i < Math.min(trace.length, MOST_FRAMES); i++) {
      frames.add(trace[i].getSTEAsString());
    }
    return frames;
  }

  /** A line stays a line, whoever wrote the message. */
  static String oneLine(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      out.append(Character.isISOControl(c) || c == '\u2028' || c == '\u2029' ? ' ' : c);
    }
    return out.toString();
  }
}
