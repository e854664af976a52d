package dev.faircarry.http;

import java.util.Locale;

/** Every kind of problem an answer can report (RFC 9457). */
enum ProblemCode {
  INVALID_DOCUMENT(422, "The document has issues", "Each is listed with its place and a remedy."),
  UNREADABLE_DOCUMENT(
      400, "The body cannot be read", "It is not UTF-8, not JSON, or nested too deep."),
  INVALID_PARAMETER(400, "A parameter of the address is wrong", "The detail names it."),
  NOT_FOUND(404, "There is nothing here", "Check the address; the documents list all of them."),
  METHOD_NOT_ALLOWED(405, "The method is not known here", "The Allow header lists those that are."),
  NOT_ACCEPTABLE(
      406, "No answer of the accepted kinds", "The detail lists the kinds that can be given."),
  TOO_LARGE(413, "The body is too large", "The detail names the limit."),
  UNSUPPORTED_MEDIA_TYPE(
      415, "The body is of a kind that is not read here", "The detail names what is read."),
  BAD_REQUEST(400, "The request is not valid", "It does not follow HTTP."),
  BUSY(503, "Too many searches wait already", "Come back after the seconds of Retry-After."),
  INTERNAL(500, "Something went wrong here", "It is in the log under the id of the request.");

  private final int status;
  private final String title;
  private final String meaning;

  ProblemCode(int status, String title, String meaning) {
    this.status = status;
    this.title = title;
    this.meaning = meaning;
  }

  int status() {
    return status;
  }

  String title() {
    return title;
  }

  String meaning() {
    return meaning;
  }

  String text() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The problem type: a place on the page that lists them. */
  String type() {
    return "/problems#" + text();
  }
}
