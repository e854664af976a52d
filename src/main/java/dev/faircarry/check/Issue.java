package dev.faircarry.check;

/**
 * Something wrong with a document: what, where, with which value, and what to do about it.
 *
 * @param pointer JSON pointer (RFC 6901) of the place; empty for the whole document
 * @param value the offending value, shortened; empty where it is private or absent
 * @param message one sentence that names the value or the limit
 * @param remedy one sentence that says what to do
 */
public record Issue(IssueCode code, String pointer, String value, String message, String remedy) {}
