package dev.faircarry.http;

import static dev.faircarry.http.RunningService.json;
import static dev.faircarry.http.RunningService.request;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.ValidatableResponse;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bad and odd input: each gets what it should, never a 500, and the service goes on. */
@ExtendWith(RunningService.class)
class OddRequestsTest {

  @AfterEach
  void theServiceGoesOn() {
    request().get("/health/live").then().statusCode(200).body("status", equalTo("up"));
  }

  private static ValidatableResponse post(String body) {
    return json(body).post("/v1/splits").then();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "{", "nope", "{\"a\":NaN}", "{} {}", "{\"days\":1,\"days\":2"})
  void whatIsNotJsonIsSaidSo(String body) {
    post(body).statusCode(400).body("code", equalTo("unreadable-document"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"null", "[]", "\"x\"", "7", "{}", "{\"format\":\"faircarry-trip/2\"}"})
  void whatIsNoTripIsSaidSo(String body) {
    post(body).statusCode(422).body("code", equalTo("invalid-document"));
  }

  @Test
  void twentyThousandBrackets() {
    post("[".repeat(20_000)).statusCode(400).body("code", equalTo("unreadable-document"));
  }

  @Test
  void twoHundredLevelsOfNesting() {
    post("{\"a\":".repeat(200) + "1" + "}".repeat(200)).statusCode(400);
  }

  @ParameterizedTest
  @CsvSource({
    "3 stones, unknown-unit",
    "-1 kg, negative",
    "12, no-unit",
    "1e308 kg, not-a-quantity",
    "201 kg, out-of-range",
    "999999999999 kg, out-of-range"
  })
  void aMassThatIsNone(String mass, String code) {
    post(SplitRoutesTest.two("{\"id\":\"a\",\"mass\":\"" + mass + "\"}", ""))
        .statusCode(422)
        .body("issues.pointer", hasItem("/shared/0/mass"))
        .body("issues.size()", equalTo(1))
        .body("issues[0].code", equalTo(code));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1e308", "-5", "0", "2.5", "\"1\"", "31", "1e-400"})
  void daysThatAreNone(String days) {
    post("{\"format\":\"faircarry-trip/1\",\"name\":\"n\",\"days\":"
            + days
            + ",\"hikers\":[{\"id\":\"x\",\"targetLoad\":\"9 kg\"}]}")
        .statusCode(422)
        .body("issues.pointer", hasItem("/days"));
  }

  @Test
  void namesThatAreUnknownTwiceOrNobody() {
    post("{\"format\":\"faircarry-trip/1\",\"name\":\"n\",\"days\":1,\"hikers\":[],\"shared\":["
            + "{\"id\":\"a\",\"mass\":\"1 g\"},{\"id\":\"a\",\"mass\":\"1 g\"}],\"colour\":1,"
            + "\"rules\":[{\"kind\":\"together\",\"pieces\":[\"a\",\"ghost\"]}]}")
        .statusCode(422)
        .body("issues.code", hasItem("unknown-field"))
        .body("issues.code", hasItem("duplicate-id"))
        .body("issues.code", hasItem("unknown-piece"))
        .body("issues.pointer", hasItem("/hikers"));
  }

  @Test
  void oddButSensible() {
    post("{\"format\":\"faircarry-trip/1\",\"name\":\"רכס\",\"days\":1,\"hikers\":[{\"id\":\"x\",\"name\":\"ליאור 🏔\",\"targetLoad\":\"9 kg\"}]}")
        .statusCode(200)
        .body("proof.proved", equalTo(true))
        .body("carries[0].name", equalTo("ליאור 🏔"));
    post(SplitRoutesTest.two("{\"id\":\"permit\",\"mass\":\"0 g\"}", "")).statusCode(200);
    String apart = "{\"kind\":\"apart\",\"pieces\":[\"a\",\"b\",\"c\"]}";
    post(SplitRoutesTest.two(
            "{\"id\":\"a\",\"mass\":\"1 g\"},{\"id\":\"b\",\"mass\":\"1 g\"},{\"id\":\"c\",\"mass\":\"1 g\"}",
            apart))
        .statusCode(200)
        .body("result", equalTo("impossible"));
  }

  @Test
  void aBodyThatIsTooLarge() {
    post("\"" + "x".repeat(10_000_000) + "\"").statusCode(413);
  }

  @Test
  void aChunkedBodyThatIsTooLarge() throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), RunningService.port())) {
      socket.setSoTimeout(10_000);
      OutputStream out = socket.getOutputStream();
      out.write(
          """
          POST /v1/splits HTTP/1.1\r
          Host: x\r
          Content-Type: application/json\r
          Transfer-Encoding: chunked\r
          \r
          """
              .getBytes(StandardCharsets.US_ASCII));
      byte[] chunk =
          ("10000\r\n" + "y".repeat(0x10000) + "\r\n").getBytes(StandardCharsets.US_ASCII);
      try {
        for (int k = 0; k < 40; k++) {
          out.write(chunk);
        }
        out.write("0\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
      } catch (IOException closed) {
        // The service may close the connection as soon as it has answered.
      }
      InputStream in = socket.getInputStream();
      byte[] start = in.readNBytes(12);
      assertEquals("HTTP/1.1 413", new String(start, StandardCharsets.US_ASCII));
    }
  }

  @Test
  void bytesThatAreNoText() {
    request()
        .contentType("application/json")
        .body(new byte[] {'{', '"', (byte) 0xC3, (byte) 0x28, '"', '}'})
        .post("/v1/splits")
        .then()
        .statusCode(400);
  }

  @Test
  void anEncodedBody() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(bytes)) {
      gzip.write('{');
    }
    request()
        .contentType("application/json")
        .header("Content-Encoding", "gzip")
        .body(bytes.toByteArray())
        .post("/v1/splits")
        .then()
        .statusCode(415);
  }

  @ParameterizedTest
  @ValueSource(strings = {"text/plain", "application/xml", "application/json; charset=utf-16"})
  void aKindThatIsNotRead(String kind) {
    request().contentType(kind).body("{}").post("/v1/splits").then().statusCode(415);
  }

  @Test
  void aKindThatIsNotGiven() {
    json("{}").accept("application/xml").post("/v1/splits").then().statusCode(406);
    request().accept("text/event-stream").get("/v1/issue-codes").then().statusCode(406);
  }

  @Test
  void methodsThatAreNotThere() {
    request().put("/v1/splits").then().statusCode(405).header("Allow", "OPTIONS, POST");
    request().delete("/health/live").then().statusCode(405).header("Allow", "GET, HEAD, OPTIONS");
    request().options("/v1/splits").then().statusCode(204).header("Allow", "OPTIONS, POST");
  }

  @Test
  void headAnswersLikeGet() {
    request().head("/health/live").then().statusCode(200);
    request().head("/nowhere").then().statusCode(404);
    request().head("/v1/splits").then().statusCode(405);
  }

  @Test
  void addressesThatAreNotThere() {
    request().get("/nowhere").then().statusCode(404).body("code", equalTo("not-found"));
    request().get("/v1/splits/7").then().statusCode(404);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "effort=0",
        "effort=-1",
        "effort=x",
        "effort=1&effort=2",
        "colour=red",
        "effort=999999999999999999999"
      })
  void parametersThatAreWrong(String query) {
    json("{}")
        .post("/v1/splits?" + query)
        .then()
        .statusCode(400)
        .body("code", equalTo("invalid-parameter"));
  }

  @Test
  void answersCarryTheirGuards() {
    String policy =
        request()
            .get("/")
            .then()
            .statusCode(200)
            .header("X-Content-Type-Options", "nosniff")
            .extract()
            .header("Content-Security-Policy");
    assertTrue(policy.contains("default-src 'none'") && !policy.contains("unsafe"), policy);
  }

  @Test
  void theClientsOwnRequestIdIsKept() {
    request()
        .header("X-Request-Id", "abc-1")
        .get("/health/ready")
        .then()
        .header("X-Request-Id", "abc-1");
  }
}
