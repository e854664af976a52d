package dev.faircarry.cli;

import dev.faircarry.check.Issue;
import dev.faircarry.json.ProblemWriter;
import dev.faircarry.json.Reading;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Standard input, output and error of one run, always UTF-8. */
public final class Console {
  private final Documents documents;
  private final TableFiles tables;
  private final PrintStream out;
  private final PrintStream err;

  public Console(InputStream in, PrintStream out, PrintStream err) {
    this.documents = new Documents(in);
    this.tables = new TableFiles(documents);
    this.out = new PrintStream(out, true, StandardCharsets.UTF_8);
    this.err = new PrintStream(err, true, StandardCharsets.UTF_8);
  }

  Documents documents() {
    return documents;
  }

  TableFiles tables() {
    return tables;
  }

  void print(String text) {
    out.print(text);
    out.flush();
  }

  void print(byte[] text) {
    out.writeBytes(text);
    out.flush();
  }

  void complain(String text) {
    err.println(text);
  }

  /** Says what is wrong with a document, for people or for machines. */
  ExitCode report(Reading.Bad<?> bad, boolean json) {
    return report(bad.issues(), bad.more(), json);
  }

  /** The same of any issues. */
  ExitCode report(List<Issue> issues, boolean more, boolean json) {
    if (json) {
      print(ProblemWriter.write(issues, more));
      return ExitCode.BAD_INPUT;
    }
    for (Issue issue : issues) {
      String value = issue.value().isEmpty() ? "" : " (" + issue.value() + ")";
      complain(issue.place() + ": " + issue.code().text() + value);
      complain("    " + issue.message() + " " + issue.remedy());
    }
    if (more) {
      complain("There are more issues than are listed.");
    }
    return ExitCode.BAD_INPUT;
  }
}
