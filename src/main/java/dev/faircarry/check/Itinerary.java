package dev.faircarry.check;

import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Trip;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Who is there when. Days run from 1; hikers are counted in the order of the trip. */
final class Itinerary {
  final Trip trip;
  final int days;
  final List<Hiker> hikers;
  private final Map<String, Integer> indexOf = new HashMap<>();

  Itinerary(Trip trip) {
    this.trip = trip;
    days = trip.days();
    hikers = trip.hikers();
    for (int i = 0; i < hikers.size(); i++) {
      indexOf.put(hikers.get(i).id(), i);
    }
  }

  /** Position of a hiker; -1 for an id nobody has. */
  int index(String id) {
    return indexOf.getOrDefault(id, -1);
  }

  int lastDay(int hiker) {
    return hikers.get(hiker).lastDay(days);
  }

  boolean present(int hiker, int day) {
    return day >= 1 && day <= lastDay(hiker);
  }

  int peopleOn(int day) {
    int people = 0;
    for (int i = 0; i < hikers.size(); i++) {
      people += present(i, day) ? 1 : 0;
    }
    return people;
  }

  boolean anyoneOf(List<String> ids, int day) {
    return ids.stream().anyMatch(id -> index(id) >= 0 && present(index(id), day));
  }

  String name(int hiker) {
    return hikers.get(hiker).name();
  }
}
