package dev.faircarry.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.app.StoreTrouble;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The problems an answer can report, and which of them the store's troubles are. */
class ProblemCodesTest {
  @Test
  void theContractNamesEachCodeAndNoOther() {
    JsonNode named =
        Contract.document().at("/components/schemas/Problem/properties/code").path("enum");
    List<String> names = new ArrayList<>();
    named.forEach(name -> names.add(name.asText()));
    assertEquals(Stream.of(ProblemCode.values()).map(ProblemCode::text).toList(), names);
  }

  /** Status codes of RFC 9110 and, for 507, of RFC 4918. */
  @ParameterizedTest
  @CsvSource({
    "FULL, 507, store-full, false",
    "READ_ONLY, 503, store-read-only, true",
    "UNAVAILABLE, 503, store-unavailable, true",
    "CONTENDED, 503, store-unavailable, true",
  })
  void aTroubleOfTheStoreIsToldAsWhatItIs(
      StoreTrouble.Kind kind, int status, String code, boolean comeAgain) {
    StoreTrouble trouble = new StoreTrouble(kind, new IOException("/secret/place"));
    ProblemException told = KeptRoutes.told(trouble);
    assertEquals(status, told.code().status());
    assertEquals(code, told.code().text());
    assertEquals(comeAgain, told.headers().containsKey("Retry-After"));
    assertTrue(told.headers().getOrDefault("Retry-After", "1").matches("[1-9][0-9]*"));
    assertEquals(-1, told.detail().indexOf("secret"));
  }
}
