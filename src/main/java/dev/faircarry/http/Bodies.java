package dev.faircarry.http;

import dev.faircarry.app.ServiceLimits;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.Set;
import org.eclipse.jetty.io.EofException;

/** Reads request bodies: of the right kind, not encoded, and never more bytes than allowed. */
final class Bodies {
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
      byte[] body = in.readNBytes(ServiceLimits.REQUEST_BYTES + 1);
      if (body.length > ServiceLimits.REQUEST_BYTES) {
        drain(in);
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
   * Takes in a little more, so that a client still sending hears the answer and not a closed
   * connection.
   */
  private static void drain(InputStream in) throws IOException {
    byte[] part = new byte[8192];
    long left = ServiceLimits.DRAINED_BYTES;
    int read = 0;
    while (left > 0 && read >= 0) {
      read = in.read(part);
      left -= read;
    }
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
