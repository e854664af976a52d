package dev.faircarry.http;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.app.Solver;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** A stored trip on a service of its own, for tests that look at pages. */
public final class OpenTrip implements AutoCloseable {
  private final KeptService service;
  private final int port;
  private final String address;
  private final String leader;

  /**
   * Creates the trip, has it split, and agrees on the split.
   *
   * @param directory where the database goes
   */
  public OpenTrip(Path directory, String document) throws IOException {
    this(new KeptService(directory, Optional.empty(), false), document);
    agree();
  }

  private OpenTrip(KeptService service, String document) {
    this.service = service;
    port = service.port();
    KeptService.Reply made = service.send("POST", "/v1/trips", "", document);
    assertEquals(201, made.status(), made.body());
    address = made.location();
    leader = made.json().path("token").asText();
  }

  /** The same without any split. */
  public static OpenTrip unsplit(Path directory, String document) throws IOException {
    return new OpenTrip(new KeptService(directory, Optional.empty(), false), document);
  }

  /** The same where the leader's searches are made by somebody else. */
  public static OpenTrip unsplit(Path directory, String document, Solver solver)
      throws IOException {
    return new OpenTrip(
        new KeptService(directory, Optional.empty(), false, HttpOptions.STANDARD, solver),
        document);
  }

  private void agree() {
    KeptService.Reply split =
        service.send("POST", address + "/splits", leader, "", "Prefer", "wait=30");
    assertEquals(201, split.status(), split.body());
    String id = split.location().substring(split.location().lastIndexOf('/') + 1);
    String body = "{\"split\": \"" + id + "\"}";
    String tag = service.get(address, leader).tag();
    KeptService.Reply agreed =
        service.send("PUT", address + "/agreed-split", leader, body, "If-Match", tag);
    assertEquals(204, agreed.status(), agreed.body());
  }

  public int port() {
    return port;
  }

  /** The address in the page of a screen of the trip. */
  public String screen(String name) {
    return "/#/t/" + id() + "/" + name;
  }

  /** What the leader opens. */
  public String leaderLink() {
    return "/#/open/" + id() + "/" + leader;
  }

  /** What a hiker, or with an empty id a viewer, opens. */
  public String link(String hiker) {
    String body =
        hiker.isEmpty()
            ? "{\"role\": \"viewer\"}"
            : "{\"role\": \"hiker\", \"hiker\": \"" + hiker + "\"}";
    KeptService.Reply made = service.send("POST", address + "/links", leader, body);
    assertEquals(201, made.status(), made.body());
    return "/#/open/" + id() + "/" + made.json().path("token").asText();
  }

  /** The trip document as its leader reads it now. */
  public JsonNode document() {
    return service.get(address, leader).json();
  }

  /**
   * Changes the trip as another leader would.
   *
   * @param path of a part, behind the address of the trip
   */
  public void change(String path, String patch) {
    KeptService.Reply changed =
        service.send("PATCH", address + path, leader, patch, "If-Match", "*");
    assertEquals(200, changed.status(), changed.body());
  }

  private String id() {
    return address.substring(address.lastIndexOf('/') + 1);
  }

  @Override
  public void close() {
    service.close();
  }
}
