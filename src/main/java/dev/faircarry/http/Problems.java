package dev.faircarry.http;

import dev.faircarry.app.Busy;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.check.Issue;
import dev.faircarry.csv.TableReading;
import dev.faircarry.json.ProblemWriter;
import dev.faircarry.json.Reading;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.jetty.http.HttpException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Turns everything that ends a request early into problem details. */
final class Problems {
  static final String MEDIA_TYPE = "application/problem+json";

  private static final Logger LOG = LoggerFactory.getLogger(Problems.class);

  private Problems() {}

  static void install(RoutesConfig routes) {
    routes.exception(ProblemException.class, Problems::answer);
    routes.exception(
        Busy.class,
        (e, ctx) ->
            answer(
                new ProblemException(ProblemCode.BUSY, "The queue of searches is full.")
                    .with("Retry-After", String.valueOf(ServiceLimits.RETRY_AFTER_SECONDS)),
                ctx));
    routes.exception(
        HttpResponseException.class,
        (e, ctx) -> answer(new ProblemException(of(e.getStatus()), detail(e.getStatus())), ctx));
    routes.exception(Exception.class, Problems::internal);
  }

  /** The value that was read, or the end of the request with all issues of the document. */
  static <T> T valueOf(Reading<T> reading) {
    if (reading instanceof Reading.Bad<T> bad) {
      throw invalid(bad);
    }
    return ((Reading.Read<T>) reading).value();
  }

  /**
   * The same of tables.
   *
   * @param around place of the trip they went into, in the document that was sent
   */
  static <T> T valueOf(TableReading<T> reading, String around) {
    if (reading instanceof TableReading.StatesHidden<T>) {
      throw new ProblemException(
          ProblemCode.BODY_MASS_HIDDEN, "A hiker keeps this body mass to themselves.");
    }
    if (reading instanceof TableReading.Bad<T> bad) {
      List<Issue> issues = bad.issues().stream().map(issue -> below(around, issue)).toList();
      throw invalid(new Reading.Bad<>(issues, bad.more()));
    }
    return ((TableReading.Read<T>) reading).value();
  }

  private static Issue below(String around, Issue issue) {
    return issue.cell().isPresent()
        ? issue
        : new Issue(
            issue.code(), around + issue.pointer(), issue.value(), issue.message(), issue.remedy());
  }

  private static ProblemException invalid(Reading.Bad<?> bad) {
    ProblemCode code =
        switch (bad.issues().get(0).code()) {
          case NOT_UTF_8, NOT_JSON, NOT_CSV, TOO_DEEP -> ProblemCode.UNREADABLE_DOCUMENT;
          case DOCUMENT_TOO_LARGE -> ProblemCode.TOO_LARGE;
          default -> ProblemCode.INVALID_DOCUMENT;
        };
    int count = bad.issues().size();
    String detail =
        bad.more()
            ? "There are more than " + count + " issues; the first are listed."
            : count == 1 ? "There is one issue." : "There are " + count + " issues.";
    return new ProblemException(code, detail, bad.issues(), bad.more());
  }

  static void answer(ProblemException e, Context ctx) {
    e.headers().forEach(ctx::header);
    ctx.status(e.code().status());
    ctx.contentType(MEDIA_TYPE);
    ctx.header("Cache-Control", "no-store");
    ctx.result(
        ProblemWriter.write(
            new ProblemWriter.Problem(
                e.code().type(),
                e.code().text(),
                e.code().title(),
                e.code().status(),
                e.detail(),
                Requests.id(ctx)),
            e.issues(),
            e.moreIssues()));
  }

  /** Messages of exceptions may quote a document; only their kinds and places are logged. */
  private static void internal(Exception e, Context ctx) {
    if (e instanceof HttpException http && http.getCode() < 500) {
      answer(new ProblemException(of(http.getCode()), "The request breaks off or is broken."), ctx);
      return;
    }
    if (LOG.isErrorEnabled()) {
      LOG.error("failed: {}{}", e.getClass().getName(), places(e));
    }
    answer(new ProblemException(ProblemCode.INTERNAL, "The request could not be answered."), ctx);
  }

  private static String places(Throwable e) {
    return Arrays.stream(e.getStackTrace())
        .limit(40)
        .map(frame -> "\n  at " + frame)
        .collect(Collectors.joining());
  }

  private static ProblemCode of(int status) {
    return switch (status) {
      case 404 -> ProblemCode.NOT_FOUND;
      case 405 -> ProblemCode.METHOD_NOT_ALLOWED;
      case 406 -> ProblemCode.NOT_ACCEPTABLE;
      case 413 -> ProblemCode.TOO_LARGE;
      case 415 -> ProblemCode.UNSUPPORTED_MEDIA_TYPE;
      case 503 -> ProblemCode.BUSY;
      default -> status < 500 ? ProblemCode.BAD_REQUEST : ProblemCode.INTERNAL;
    };
  }

  private static String detail(int status) {
    return status == 404 ? "No resource has this address." : "The request was refused.";
  }
}
