package dev.faircarry.http;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The contract, a browsable page of it, and the page one arrives at. */
final class PageRoutes implements Routes.Resource {
  /** What the documents page needs beyond the policy of all other pages: inline styles. */
  private static final String DOCS_POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self'"
          + " data:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors"
          + " 'none'";

  private final String webJar;

  /**
   * @param docsVersion version of the bundled documents page
   */
  PageRoutes(String docsVersion) {
    webJar = "/META-INF/resources/webjars/swagger-ui/" + docsVersion + "/";
  }

  @Override
  public void register(Routes routes) {
    routes
        .get("/", PageRoutes::home)
        .get("/openapi.yaml", kept("application/yaml", "/openapi/openapi.yaml"))
        .get("/docs", PageRoutes::docs)
        .get("/docs/start.js", kept("text/javascript; charset=utf-8", "/pages/docs-start.js"))
        .get(
            "/docs/bundle.js",
            kept("text/javascript; charset=utf-8", webJar + "swagger-ui-bundle.js"))
        .get("/docs/bundle.css", kept("text/css; charset=utf-8", webJar + "swagger-ui.css"))
        .get("/assets/page.css", kept("text/css; charset=utf-8", "/pages/page.css"));
  }

  private static void home(Context ctx) {
    Accepting.oneOf(ctx, List.of(Accepting.HTML));
    Answers.html(
        ctx,
        new Page("Faircarry")
            .element("p", "Divides shared hiking gear fairly, and shows that it is fair.")
            .link("/docs", "How to ask it")
            .link("/openapi.yaml", "The contract, for machines")
            .link("/v1/issue-codes", "What can be wrong with a document")
            .link("/problems", "Why a request can fail")
            .html());
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
