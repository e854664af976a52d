package dev.faircarry.access;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The secret of a link, as its bearer holds it: {@code <link id>.<secret>}. The secret has 192
 * random bits; the service keeps only its {@link TokenHash}.
 *
 * @param linkId names the link; not secret
 * @param secret URL-safe Base64 without padding
 */
public record Token(String linkId, String secret) {
  private static final int ID_BYTES = 9;
  private static final int SECRET_BYTES = 24;
  private static final Pattern FORM = Pattern.compile("([0-9a-f]{18})\\.([A-Za-z0-9_-]{32})");

  /** A token nobody has seen. */
  public static Token fresh(SecureRandom random) {
    return new Token(freshId(random), secret(random));
  }

  /** An id of 72 random bits, for a trip, a split or a job. */
  public static String freshId(SecureRandom random) {
    byte[] drawn = new byte[ID_BYTES];
    random.nextBytes(drawn);
    return HexFormat.of().formatHex(drawn);
  }

  /** Reads what a bearer sent; empty when it cannot be a token of this service. */
  public static Optional<Token> read(String text) {
    Matcher matcher = FORM.matcher(text);
    return matcher.matches()
        ? Optional.of(new Token(matcher.group(1), matcher.group(2)))
        : Optional.empty();
  }

  /** The text handed to the bearer, once. */
  public String text() {
    return linkId + "." + secret;
  }

  /** What the service keeps of it. */
  public TokenHash hash() {
    return TokenHash.of(secret.getBytes(StandardCharsets.US_ASCII));
  }

  /** Never the secret: records end up in messages. */
  @Override
  public String toString() {
    return "Token[" + linkId + "]";
  }

  private static String secret(SecureRandom random) {
    byte[] drawn = new byte[SECRET_BYTES];
    random.nextBytes(drawn);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(drawn);
  }
}
