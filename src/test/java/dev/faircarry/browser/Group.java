package dev.faircarry.browser;

import dev.faircarry.http.KeptService;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** A made-up group with a stored trip on a service of its own. */
final class Group implements AutoCloseable {
  /** Three days; the canister is Asha's, the filter Tomas's, and Bo leaves after the second day. */
  static final String TRIP =
      """
      {"format": "faircarry-trip/1", "name": "Over the two passes", "days": 3,
       "hikers": [
         {"id": "asha", "name": "Asha", "bodyMass": "58 kg",
          "pack": {"mass": "1.2 kg", "volume": "55 L"},
          "kit": [{"id": "quilt", "name": "Quilt", "mass": "650 g", "massFrom": "scale", "stow": "bottom"},
                  {"id": "lamp", "name": "Headlamp", "mass": "80 g", "stow": "at-hand", "covers": ["light"]},
                  {"id": "boots", "name": "Boots", "mass": "1.1 kg", "worn": true}]},
         {"id": "tomas", "name": "Tomás", "bodyMass": "81 kg",
          "pack": {"mass": "1.6 kg", "volume": "60 L"},
          "kit": [{"id": "bag", "name": "Sleeping bag", "mass": "1.3 kg", "stow": "bottom"},
                  {"id": "jacket", "name": "Down jacket", "mass": "420 g", "stow": "top"}]},
         {"id": "bo", "name": "Bo", "targetLoad": "11 kg", "leavesAfterDay": 2,
          "pack": {"mass": "1.4 kg", "volume": "50 L"},
          "kit": [{"id": "mat", "name": "Mat", "mass": "480 g", "stow": "outside"}]}],
       "shared": [
         {"id": "shelter", "name": "Two-pole shelter", "sleeps": 3, "parts": [
            {"id": "fly", "name": "Fly", "mass": "980 g", "stow": "outside"},
            {"id": "inner", "name": "Inner", "mass": "760 g", "volume": "5 L"},
            {"id": "poles", "name": "Poles and pegs", "mass": "610 g", "stow": "outside"}]},
         {"id": "canister", "name": "Food canister", "owner": "asha", "mass": "1.1 kg", "volume": "12 L",
          "contains": {"kind": "food", "volume": "11 L"}},
         {"id": "box", "name": "Second canister", "mass": "1.0 kg", "volume": "11 L",
          "contains": {"kind": "food", "volume": "10 L"}},
         {"id": "dinner", "name": "Dinner", "count": 8, "unitMass": "190 g", "unitVolume": "0.8 L",
          "goesInto": "food", "use": {"kind": "units-per-day", "perDay": [3, 3, 2], "leaves": "12 g"}},
         {"id": "stove", "name": "Stove", "mass": "120 g", "covers": ["flame"]},
         {"id": "gas", "name": "Gas", "mass": "380 g", "use": {"kind": "evenly", "leaves": "150 g"}},
         {"id": "pot", "name": "Pot", "mass": "450 g", "volume": "3 L"},
         {"id": "filter", "name": "Filter", "owner": "tomas", "mass": "110 g", "stow": "at-hand",
          "covers": ["water-treatment"]},
         {"id": "first-aid", "name": "First aid", "mass": "390 g", "stow": "top", "covers": ["first-aid"]},
         {"id": "rope", "name": "Hand line", "mass": "900 g", "stow": "inside"}],
       "rules": [{"id": "r1", "kind": "together", "pieces": ["stove", "pot"]}]}
      """;

  final KeptService service;
  final String trip;
  final String leader;

  /**
   * @param directory where its database goes
   */
  Group(Path directory) {
    try {
      service = new KeptService(directory, Optional.empty(), false);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    KeptService.Reply made = service.send("POST", "/v1/trips", "", TRIP);
    require(made, 201);
    trip = made.location();
    leader = made.json().path("token").asText();
  }

  String id() {
    return trip.substring(trip.lastIndexOf('/') + 1);
  }

  private static void require(KeptService.Reply reply, int status) {
    if (reply.status() != status) {
      throw new AssertionError(reply.status() + " " + reply.body());
    }
  }

  /** A hiker's link, or with an empty name a viewer's. */
  String link(String hiker) {
    String body =
        hiker.isEmpty()
            ? "{\"role\": \"viewer\"}"
            : "{\"role\": \"hiker\", \"hiker\": \"" + hiker + "\"}";
    KeptService.Reply made = service.send("POST", trip + "/links", leader, body);
    require(made, 201);
    return made.json().path("token").asText();
  }

  /** The address a link is handed out as. */
  String address(String token) {
    return "/#/open/" + id() + "/" + token;
  }

  /** Searches for a split and has the group agree on it. */
  Group agreed() {
    KeptService.Reply found =
        service.send("POST", trip + "/splits?effort=200000", leader, "", "Prefer", "wait=30");
    require(found, 201);
    String split = found.location().substring(found.location().lastIndexOf('/') + 1);
    require(
        service.send(
            "PUT",
            trip + "/agreed-split",
            leader,
            "{\"split\": \"" + split + "\"}",
            "If-Match",
            "*"),
        204);
    return this;
  }

  @Override
  public void close() {
    service.close();
  }
}
