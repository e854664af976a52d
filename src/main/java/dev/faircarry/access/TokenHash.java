package dev.faircarry.access;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * SHA-256 of a secret with enough random bits that neither salt nor stretching adds anything.
 *
 * @param hex 64 hexadecimal digits
 */
public record TokenHash(String hex) {
  /** Stands in where there is no link, so that a miss takes the same work as a wrong secret. */
  public static final TokenHash NONE = new TokenHash("0".repeat(64));

  static TokenHash of(byte[] secret) {
    try {
      return new TokenHash(
          HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(secret)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** Whether both are the same, in time that does not depend on where they differ. */
  public boolean sameAs(TokenHash other) {
    return MessageDigest.isEqual(HexFormat.of().parseHex(hex), HexFormat.of().parseHex(other.hex));
  }
}
