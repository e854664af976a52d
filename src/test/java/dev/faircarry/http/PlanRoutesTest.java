package dev.faircarry.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.Main;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rest of the trip over HTTP, on a real server. */
class PlanRoutesTest {
  private static final HttpClient CLIENT = HttpClient.newHttpClient();
  private static Server server;

  @BeforeAll
  static void start() {
    server = Main.server("127.0.0.1", 0);
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  private static HttpResponse<String> post(String path, String accept, String body)
      throws IOException, InterruptedException {
    return CLIENT.send(
        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
            .header("Content-Type", "application/json")
            .header("Accept", accept)
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build(),
        HttpResponse.BodyHandlers.ofString());
  }

  private static String demo(String name) throws IOException {
    return Files.readString(Path.of("demo-data/plans/" + name + ".json"));
  }

  @Test
  void provisions() throws Exception {
    HttpResponse<String> answer = post("/v1/provisions", "application/json", demo("whole-trip"));
    assertEquals(200, answer.statusCode());
    assertTrue(answer.body().contains("\"plan-ration\""), answer.body());
  }

  /** Two shelters for 520.00 pass the budget of 300.00; one, with the lighter pot, is 298.00. */
  @Test
  void choice() throws Exception {
    HttpResponse<String> answer =
        post(
            "/v1/choices",
            "application/json",
            "{\"withSplits\":true,\"trip\":" + demo("what-to-take") + "}");
    assertEquals(200, answer.statusCode());
    assertTrue(answer.body().contains("\"outcome\" : \"chosen\""), answer.body());
    assertTrue(answer.body().contains("\"effect\""), answer.body());
  }

  @ParameterizedTest
  @CsvSource({"loads, Loads against target", "makeup, What each load is made of"})
  void pictures(String plot, String title) throws Exception {
    HttpResponse<String> answer =
        post("/v1/kit-reports?plot=" + plot, "image/svg+xml", "{\"trip\":" + demo("own-kit") + "}");
    assertEquals(200, answer.statusCode());
    assertEquals(
        "image/svg+xml;charset=utf-8", answer.headers().firstValue("Content-Type").orElse(""));
    assertTrue(answer.body().contains(title), answer.body());
  }

  @ParameterizedTest
  @CsvSource({"/v1/kit-reports, driftGrams", "/v1/efforts, kilocalories"})
  void reports(String path, String field) throws Exception {
    HttpResponse<String> answer =
        post(path, "application/json", "{\"trip\":" + demo("own-kit") + "}");
    assertEquals(200, answer.statusCode());
    assertTrue(answer.body().contains(field), answer.body());
    assertTrue(answer.body().contains("cautions"), answer.body());
  }

  @ParameterizedTest
  @CsvSource({
    "/v1/provisions, application/json, '[]', 422",
    "/v1/choices, application/json, 'null', 422",
    "/v1/choices, application/json, '{', 400",
    "/v1/efforts, application/xml, '{}', 406",
    "/v1/kit-reports?plot=ring, image/svg+xml, '{}', 400",
    "/v1/choices?effort=0, application/json, '{}', 400"
  })
  void refused(String path, String accept, String body, int status) throws Exception {
    assertEquals(status, post(path, accept, body).statusCode());
  }
}
