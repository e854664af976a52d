package dev.faircarry.http;

import dev.faircarry.check.IssueCode;
import dev.faircarry.json.IssueCodeWriter;
import dev.faircarry.json.IssueSamples;
import io.javalin.http.Context;
import java.util.List;

/** The list of issue codes, for machines and for people, and the list of problems. */
final class IssueCodeRoutes implements Routes.Resource {
  @Override
  public void register(Routes routes) {
    routes.get("/v1/issue-codes", this::codes).get("/problems", this::problems);
  }

  private void codes(Context ctx) {
    Parameters.known(ctx);
    ctx.header("Vary", "Accept");
    if (Accepting.oneOf(ctx, List.of(Accepting.JSON, Accepting.HTML)).equals(Accepting.HTML)) {
      Answers.html(ctx, page());
    } else {
      Answers.json(ctx, IssueCodeWriter.write());
    }
  }

  private static String page() {
    Page page =
        new Page("Issue codes")
            .element("p", "What can be wrong with a document, each with a smallest sample.");
    for (IssueCode code : IssueCode.values()) {
      page.anchor(code.text(), code.text())
          .element("p", code.meaning())
          .element("p", code.remedy())
          .code(IssueSamples.shown(code));
    }
    return page.html();
  }

  private void problems(Context ctx) {
    Parameters.known(ctx);
    Accepting.oneOf(ctx, List.of(Accepting.HTML));
    Page page =
        new Page("Problems").element("p", "Why a request can fail, by the code of its problem.");
    for (ProblemCode code : ProblemCode.values()) {
      page.anchor(code.text(), code.text())
          .element("p", code.status() + ": " + code.title() + ". " + code.meaning());
    }
    Answers.html(ctx, page.html());
  }
}
