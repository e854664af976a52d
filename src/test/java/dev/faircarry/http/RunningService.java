package dev.faircarry.http;

import static io.restassured.RestAssured.given;

import dev.faircarry.Main;
import io.restassured.specification.RequestSpecification;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** The real service on a free port, started once for all tests of the run. */
public final class RunningService implements BeforeAllCallback {
  private static Server server;

  @Override
  public void beforeAll(ExtensionContext context) {
    start();
  }

  private static synchronized void start() {
    if (server == null) {
      server = Main.server("127.0.0.1", 0);
      Runtime.getRuntime().addShutdownHook(new Thread(server::close));
    }
  }

  /** The port it listens on. */
  public static int port() {
    return server.port();
  }

  /** A request to it whose answer is held against the contract. */
  public static RequestSpecification request() {
    return given().baseUri("http://127.0.0.1").port(port()).filter(new Contract());
  }

  /** The same with a JSON body. */
  public static RequestSpecification json(Object body) {
    return request().contentType("application/json").body(body);
  }
}
