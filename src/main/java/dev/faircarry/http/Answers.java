package dev.faircarry.http;

import dev.faircarry.csv.Table;
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

  /** A table, as RFC 4180 names its kind, to be kept as a file. */
  static void table(Context ctx, Table table, byte[] body) {
    bytes(ctx, Accepting.CSV + "; charset=utf-8; header=present", body);
    ctx.header("Content-Disposition", "attachment; filename=\"" + table.text() + ".csv\"");
    ctx.header("Cache-Control", "no-store");
  }

  static void bytes(Context ctx, String contentType, byte[] body) {
    ctx.contentType(contentType);
    ctx.result(body);
  }
}
