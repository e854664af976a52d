package dev.faircarry.http;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The page of the service with its files, the contract, and a browsable page of it. */
final class PageRoutes implements Routes.Resource {
  /** What the documents page needs beyond the policy of all other pages: inline styles. */
  private static final String DOCS_POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self'"
          + " data:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors"
          + " 'none'";

  /** What the page may do: run and load what comes from here, and ask the service. */
  private static final String PAGE_POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:;"
          + " connect-src 'self'; worker-src 'self'; manifest-src 'self'; base-uri 'none';"
          + " form-action 'none'; frame-ancestors 'none'";

  /** A year: the address of a file of the page changes with its contents. */
  private static final String FOR_EVER = "public, max-age=31536000, immutable";

  private final String webJar;
  private final PageFiles page;

  /**
   * @param docsVersion version of the bundled documents page
   * @param page the files of the page
   */
  PageRoutes(String docsVersion, PageFiles page) {
    webJar = "/META-INF/resources/webjars/swagger-ui/" + docsVersion + "/";
    this.page = page;
  }

  @Override
  public void register(Routes routes) {
    routes
        .get("/", this::start)
        .get("/worker.js", this::worker)
        .get("/favicon.ico", kept("image/svg+xml", "/page/mark.svg"))
        .get("/openapi.yaml", kept("application/yaml", "/openapi/openapi.yaml"))
        .get("/docs", PageRoutes::docs)
        .get("/docs/start.js", kept("text/javascript; charset=utf-8", "/pages/docs-start.js"))
        .get(
            "/docs/bundle.js",
            kept("text/javascript; charset=utf-8", webJar + "swagger-ui-bundle.js"))
        .get("/docs/bundle.css", kept("text/css; charset=utf-8", webJar + "swagger-ui.css"))
        .get("/assets/page.css", kept("text/css; charset=utf-8", "/pages/page.css"));
    for (String name : page.names()) {
      byte[] bytes = page.bytes(name);
      String kind = PageFiles.kind(name);
      routes.get(
          "/page/" + page.version() + "/" + name,
          ctx -> {
            Answers.bytes(ctx, kind, bytes);
            ctx.header("Cache-Control", FOR_EVER);
            ctx.header("Vary", "Accept-Encoding");
          });
    }
  }

  private void start(Context ctx) {
    Accepting.oneOf(ctx, List.of(Accepting.HTML));
    ctx.header("Content-Security-Policy", PAGE_POLICY);
    Answers.html(ctx, page.start());
  }

  /** Asks under the policy of the page; its address is the widest place it may keep. */
  private void worker(Context ctx) {
    ctx.header("Content-Security-Policy", PAGE_POLICY);
    Answers.bytes(
        ctx, "text/javascript; charset=utf-8", page.worker().getBytes(StandardCharsets.UTF_8));
    ctx.header("Cache-Control", "no-cache");
  }

  private static void docs(Context ctx) {
    Accepting.oneOf(ctx, List.of(Accepting.HTML));
    ctx.header("Content-Security-Policy", DOCS_POLICY);
    Answers.bytes(ctx, "text/html; charset=utf-8", Bundled.file("/pages/docs.html"));
  }

  /** A file that stays the same as long as the program runs. */
  private static Handler kept(String contentType, String path) {
    byte[] bytes = Bundled.file(path);
    String tag =
        '"' + Integer.toHexString(new String(bytes, StandardCharsets.UTF_8).hashCode()) + '"';
    return ctx -> {
      ctx.header("ETag", tag);
      ctx.header("Cache-Control", "no-cache");
      if (tag.equals(ctx.header("If-None-Match"))) {
        ctx.status(304);
        return;
      }
      Answers.bytes(ctx, contentType, bytes);
    };
  }
}
