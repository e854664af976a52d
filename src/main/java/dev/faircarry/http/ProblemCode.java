package dev.faircarry.http;

import java.util.Locale;

/** Every kind of problem an answer can report (RFC 9457). */
enum ProblemCode {
  INVALID_DOCUMENT(422, "The document has issues", "Each is listed with its place and a remedy."),
  UNREADABLE_DOCUMENT(
      400, "The body cannot be read", "It is not UTF-8, not JSON, not CSV, or nested too deep."),
  INVALID_PARAMETER(400, "A parameter of the address is wrong", "The detail names it."),
  NOT_FOUND(404, "There is nothing here", "Check the address; the documents list all of them."),
  METHOD_NOT_ALLOWED(405, "The method is not known here", "The Allow header lists those that are."),
  METHOD_UNKNOWN(
      501, "No address knows the method", "GET, HEAD, POST, PUT, PATCH, DELETE and OPTIONS are."),
  NOT_ACCEPTABLE(
      406, "No answer of the accepted kinds", "The detail lists the kinds that can be given."),
  TOO_LARGE(413, "The body is too large", "The detail names the limit."),
  UNSUPPORTED_MEDIA_TYPE(
      415, "The body is of a kind that is not read here", "The detail names what is read."),
  BAD_REQUEST(400, "The request is not valid", "It does not follow HTTP."),
  FORBIDDEN(403, "This link may not do that", "The detail says whose link may."),
  BODY_MASS_HIDDEN(
      403,
      "The document states a body mass you do not see",
      "Leave the body mass out; the service keeps the one that stands."),
  LINK_NOT_OWN(
      403,
      "The leader has seen this link",
      "Make a link of your own first, and use that: POST to the links of the trip."),
  LIMIT_REACHED(403, "There are as many as there may be", "The detail names the limit."),
  LAST_HIKER(409, "Nobody would be left", "Erase the trip instead."),
  NO_AGREED_SPLIT(
      409, "No split is agreed on", "Agree on one first: PUT .../agreed-split names it."),
  STALE(412, "The trip has changed meanwhile", "Read it again and repeat the change on that."),
  SPLIT_BREAKS_RULES(
      422, "The split breaks a hard rule", "Only splits that keep all hard rules are kept."),
  KEY_REUSED(
      422, "The idempotency key was used for another request", "Take a new key for a new request."),
  PRECONDITION_REQUIRED(
      428, "The change does not say what it was made from", "Send If-Match with the ETag."),
  TOO_MANY_REQUESTS(
      429, "Too many requests in a short time", "Come back after the seconds of Retry-After."),
  STORE_UNAVAILABLE(
      503, "The store does not answer", "Nothing was kept; try again after Retry-After."),
  STORE_READ_ONLY(503, "The store can only be read now", "Nothing was kept; try again later."),
  STORE_FULL(507, "The store has no room left", "Nothing was kept; reading still works."),
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
