package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.check.Cell;
import dev.faircarry.check.Issue;
import java.util.List;

/** Writes problem details (RFC 9457) and lists of issues. */
public final class ProblemWriter {
  private ProblemWriter() {}

  /**
   * What a problem is, whatever its document.
   *
   * @param type where the kind of problem is explained
   * @param code its name in short
   * @param detail about this very case
   * @param request id of the request, as it stands in the log
   */
  public record Problem(
      String type, String code, String title, int status, String detail, String request) {}

  /** The body of a problem; {@code issues} is there when it is about a document. */
  public static byte[] write(Problem problem, List<Issue> issues, boolean more) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("type", problem.type());
    out.put("code", problem.code());
    out.put("title", problem.title());
    out.put("status", problem.status());
    out.put("detail", problem.detail());
    out.put("request", problem.request());
    if (!issues.isEmpty()) {
      issues(out, issues, more);
    }
    return JsonBytes.of(out);
  }

  /** The issues alone, as the command line shows them. */
  public static byte[] write(List<Issue> issues, boolean more) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    issues(out, issues, more);
    return JsonBytes.of(out);
  }

  private static void issues(ObjectNode out, List<Issue> issues, boolean more) {
    ArrayNode list = out.putArray("issues");
    for (Issue issue : issues) {
      ObjectNode one = list.addObject();
      one.put("code", issue.code().text());
      issue.cell().ifPresentOrElse(cell -> cell(one, cell), () -> pointer(one, issue));
      if (!issue.value().isEmpty()) {
        one.put("value", issue.value());
      }
      one.put("message", issue.message());
      one.put("remedy", issue.remedy());
    }
    out.put("moreIssues", more);
  }

  private static void pointer(ObjectNode out, Issue issue) {
    out.put("pointer", issue.pointer());
  }

  private static void cell(ObjectNode out, Cell cell) {
    out.put("table", cell.table());
    out.put("row", cell.row());
    if (!cell.column().isEmpty()) {
      out.put("column", cell.column());
    }
  }
}
