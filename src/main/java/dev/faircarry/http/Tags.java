package dev.faircarry.http;

import dev.faircarry.app.ChangeResult;
import dev.faircarry.app.Visit;
import io.javalin.http.Context;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Entity tags of stored trips: the revision, and who looks, for not everybody sees the same. One
 * revision counts for the whole trip and all its parts.
 */
final class Tags {
  private static final Pattern TAG = Pattern.compile("\"([0-9]{1,9})\\.[^\"]*\"");

  private Tags() {}

  static String of(Visit visit, int revision) {
    String who = visit.link().hiker().orElse("");
    return "\"" + revision + "." + visit.role().name().toLowerCase(Locale.ROOT) + "." + who + "\"";
  }

  /** The tag of the same as a table, which is another text. */
  static String ofTable(Visit visit, int revision) {
    String tag = of(visit, revision);
    return tag.substring(0, tag.length() - 1) + ".csv\"";
  }

  /** The revision a change was made from, as If-Match says. */
  static int expected(Context ctx, Visit visit) {
    String stated = ctx.header("If-Match");
    if (stated == null) {
      throw new ProblemException(
          ProblemCode.PRECONDITION_REQUIRED, "Send If-Match with the ETag of what you read.");
    }
    if (stated.strip().equals("*")) {
      return visit.stored().head();
    }
    Matcher tag = TAG.matcher(stated.strip());
    // A tag that is none of ours matches no revision, and there is no revision 0.
    return tag.matches() ? Integer.parseInt(tag.group(1)) : 0;
  }

  /**
   * The same, which must be the newest: whoever changes an old one need not wait for those who
   * write.
   */
  static int newest(Context ctx, Visit visit) {
    int expected = expected(ctx, visit);
    return kept(
        expected == visit.stored().head()
            ? new ChangeResult.Kept(expected)
            : new ChangeResult.Stale(visit.stored().head()));
  }

  /** Whether the reader has this already; the answer is then 304 without a body. */
  static boolean unchanged(Context ctx, String tag) {
    ctx.header("ETag", tag);
    ctx.res().addHeader("Vary", "Authorization");
    String has = ctx.header("If-None-Match");
    boolean same = has != null && (has.strip().equals("*") || has.contains(tag));
    if (same) {
      ctx.status(304);
      ctx.header("Cache-Control", "no-store");
    }
    return same;
  }

  /** The revision that was kept, or the end of the request. */
  static int kept(ChangeResult result) {
    if (result instanceof ChangeResult.Kept kept) {
      return kept.revision();
    }
    if (result instanceof ChangeResult.Stale) {
      throw new ProblemException(
          ProblemCode.STALE, "Another change came first; the ETag in If-Match is an old one.");
    }
    throw new ProblemException(ProblemCode.NOT_FOUND, "No resource has this address.");
  }
}
