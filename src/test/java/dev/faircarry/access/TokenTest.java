package dev.faircarry.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.security.SecureRandom;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TokenTest {
  private final SecureRandom random = new SecureRandom();

  @Test
  void tokenComesBackFromItsText() {
    Token token = Token.fresh(random);
    assertEquals(Optional.of(token), Token.read(token.text()));
    assertTrue(token.hash().sameAs(Token.read(token.text()).orElseThrow().hash()));
    assertFalse(token.hash().sameAs(Token.fresh(random).hash()));
    assertFalse(token.hash().sameAs(TokenHash.NONE));
  }

  @Test
  void secretHas192BitsAndNoneComesTwice() {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < 1000; i++) {
      Token token = Token.fresh(random);
      // 32 letters of 6 bits each
      assertEquals(32, token.secret().length());
      assertTrue(seen.add(token.secret()));
    }
  }

  @Test
  void messageNeverHoldsTheSecret() {
    Token token = Token.fresh(random);
    assertFalse(token.toString().contains(token.secret()));
    assertFalse(token.hash().toString().contains(token.secret()));
  }

  /** SHA-256 of "abc": FIPS 180-2, appendix B.1. */
  @Test
  void hashIsSha256() {
    assertEquals(
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        new Token("0", "abc").hash().hex());
  }

  @Test
  void otherTextsAreNoTokens() {
    String good = Token.fresh(random).text();
    for (String bad :
        List.of("", ".", good + "x", good.substring(1), good.replace('.', ':'), " " + good)) {
      assertEquals(Optional.empty(), Token.read(bad), bad);
    }
  }

  @Test
  void linkEndsWhenItExpiresOrIsRevoked() {
    Instant noon = Instant.parse("2026-06-01T12:00:00Z");
    Link open =
        new Link(
            "l",
            "t",
            Role.VIEWER,
            Optional.empty(),
            false,
            noon,
            Optional.empty(),
            Optional.empty());
    Link ending =
        new Link(
            "l",
            "t",
            Role.VIEWER,
            Optional.empty(),
            false,
            noon,
            Optional.of(noon),
            Optional.empty());
    Link revoked =
        new Link(
            "l",
            "t",
            Role.VIEWER,
            Optional.empty(),
            false,
            noon,
            Optional.empty(),
            Optional.of(noon));
    assertTrue(open.holds(noon));
    assertTrue(ending.holds(noon.minusMillis(1)));
    assertFalse(ending.holds(noon));
    assertFalse(revoked.holds(noon.minusMillis(1)));
  }

  @Test
  void onlyAHikersLinkNamesAHiker() {
    Instant noon = Instant.parse("2026-06-01T12:00:00Z");
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new Link(
                "l",
                "t",
                Role.LEADER,
                Optional.of("a"),
                false,
                noon,
                Optional.empty(),
                Optional.empty()));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new Link(
                "l",
                "t",
                Role.HIKER,
                Optional.empty(),
                false,
                noon,
                Optional.empty(),
                Optional.empty()));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new Link(
                "l",
                "t",
                Role.VIEWER,
                Optional.empty(),
                true,
                noon,
                Optional.empty(),
                Optional.empty()));
  }
}
