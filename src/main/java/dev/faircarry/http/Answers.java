package dev.faircarry.http;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;

/** Writes bodies. */
final class Answers {
  private Answers() {}

  /** A JSON answer that is nobody else's and is not kept on the way. */
  static void json(Context ctx, byte[] body) {
    bytes(ctx, "application/json", body);
    ctx.header("Cache-Control", "no-store");
  }

  /** An HTML page. */
  static void html(Context ctx, String page) {
    bytes(ctx, "text/html; charset=utf-8", page.getBytes(StandardCharsets.UTF_8));
    ctx.header("Cache-Control", "no-cache");
  }

  static void bytes(Context ctx, String contentType, byte[] body) {
    ctx.contentType(contentType);
    ctx.result(body);
  }
}
