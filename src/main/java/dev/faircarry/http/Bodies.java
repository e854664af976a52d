package dev.faircarry.http;

import dev.faircarry.app.ServiceLimits;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.io.EofException;

/** Reads request bodies: of the right kind, not encoded, and never more bytes than allowed. */
final class Bodies {
  private static final int PART_BYTES = 16_384;

  private Bodies() {}

  /** The bytes of a JSON body. */
  static byte[] json(Context ctx) {
    return read(ctx, Set.of("application/json"));
  }

  /**
   * The bytes of a body.
   *
   * @param kinds media types that are read, without parameters, in lower case
   */
  static byte[] read(Context ctx, Set<String> kinds) {
    requireKind(ctx, kinds);
    requireUnencoded(ctx);
    try (InputStream in = ctx.req().getInputStream()) {
      long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(ServiceLimits.BODY_SECONDS);
      byte[] body = upTo(in, ServiceLimits.REQUEST_BYTES + 1, end);
      if (body.length > ServiceLimits.REQUEST_BYTES) {
        upTo(in, ServiceLimits.DRAINED_BYTES, end);
        throw tooLarge();
      }
      return body;
    } catch (EofException e) {
      throw new ProblemException(ProblemCode.BAD_REQUEST, "The body ends too early.");
    } catch (IOException e) {
      throw new ProblemException(ProblemCode.BAD_REQUEST, "The body could not be read.");
    }
  }

  /**
   * Reads until the body, the bytes or the time ends. What is too much is still taken in for a
   * while, so that a client still sending hears the answer and not a closed connection.
   */
  private static byte[] upTo(InputStream in, int most, long endNanos) throws IOException {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    byte[] part = new byte[PART_BYTES];
    while (all.size() < most) {
      int read = in.read(part, 0, Math.min(part.length, most - all.size()));
      if (read < 0) {
        break;
      }
      all.write(part, 0, read);
      if (System.nanoTime() - endNanos > 0) {
        throw new ProblemException(
                ProblemCode.BAD_REQUEST,
                "The body did not come within " + ServiceLimits.BODY_SECONDS + " seconds.")
            .with("Connection", "close");
      }
    }
    return all.toByteArray();
  }

  /** Media type without parameters, in lower case; empty where none is stated. */
  static String kind(Context ctx) {
    String stated = ctx.req().getContentType();
    return stated == null ? "" : stated.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
  }

  private static void requireKind(Context ctx, Set<String> kinds) {
    String stated = ctx.req().getContentType();
    String rest = stated == null || !stated.contains(";") ? "" : stated.split(";", 2)[1];
    String charset = rest.replace("\"", "").replace(" ", "").toLowerCase(Locale.ROOT);
    boolean utf8 = !charset.contains("charset=") || charset.contains("charset=utf-8");
    if (!kinds.contains(kind(ctx)) || !utf8) {
      String wanted = String.join(" or ", kinds);
      throw new ProblemException(
              ProblemCode.UNSUPPORTED_MEDIA_TYPE,
              "Send " + wanted + " in UTF-8 and say so in Content-Type.")
          .with("Accept", String.join(", ", kinds));
    }
  }

  private static void requireUnencoded(Context ctx) {
    String encoding = ctx.req().getHeader("Content-Encoding");
    if (encoding != null && !encoding.strip().equalsIgnoreCase("identity")) {
      throw new ProblemException(
              ProblemCode.UNSUPPORTED_MEDIA_TYPE, "Send the body without Content-Encoding.")
          .with("Accept-Encoding", "identity");
    }
  }

  private static ProblemException tooLarge() {
    return new ProblemException(
            ProblemCode.TOO_LARGE,
            "A body may have " + ServiceLimits.REQUEST_BYTES + " bytes; this one has more.")
        .with("Connection", "close");
  }
}
