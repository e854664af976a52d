package dev.faircarry.store;

import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/**
 * Erases what a trip's past knows of a hiker. Revisions stay as lines of history, without document
 * and without words; splits and jobs of the past that may name the hiker go.
 */
final class HikerErasure {
  private HikerErasure() {}

  static void erase(Handle handle, Documents documents, String trip, String hiker) {
    List<Integer> naming =
        handle
            .createQuery(
                "SELECT number, sealed FROM revisions WHERE trip = :trip AND sealed IS NOT NULL"
                    + " AND number < (SELECT head FROM trips WHERE id = :trip)")
            .bind("trip", trip)
            .map((row, context) -> Map.entry(row.getInt("number"), row.getBytes("sealed")))
            .stream()
            .filter(each -> names(documents.trip(trip, each.getKey(), each.getValue()), hiker))
            .map(Map.Entry::getKey)
            .toList();
    PreparedBatch batch =
        handle.prepareBatch(
            "UPDATE revisions SET sealed = NULL, what = 'erased', kept_private = '', agreed = NULL"
                + " WHERE trip = :trip AND number = :number");
    naming.forEach(number -> batch.bind("trip", trip).bind("number", number).add());
    if (batch.size() > 0) {
      batch.execute();
    }
    eraseSplits(handle, documents, trip, hiker);
    eraseReadings(handle, documents, trip, hiker);
    for (String statement :
        List.of(
            "DELETE FROM links WHERE trip = :trip AND hiker = :hiker",
            "DELETE FROM jobs WHERE trip = :trip",
            "UPDATE revisions SET by_hiker = NULL WHERE trip = :trip AND by_hiker = :hiker",
            "UPDATE readings SET by_hiker = NULL WHERE trip = :trip AND by_hiker = :hiker",
            "UPDATE splits SET by_hiker = NULL WHERE trip = :trip AND by_hiker = :hiker")) {
      // A statement without :hiker would refuse to be bound; all but one have it.
      var update = handle.createUpdate(statement).bind("trip", trip);
      (statement.contains(":hiker") ? update.bind("hiker", hiker) : update).execute();
    }
  }

  private static void eraseSplits(Handle handle, Documents documents, String trip, String hiker) {
    List<String> naming =
        handle
            .createQuery("SELECT id, sealed FROM splits WHERE trip = :trip")
            .bind("trip", trip)
            .map((row, context) -> Map.entry(row.getString("id"), row.getBytes("sealed")))
            .stream()
            .filter(
                each -> names(documents.split(trip, each.getKey(), each.getValue()).split(), hiker))
            .map(Map.Entry::getKey)
            .toList();
    naming.forEach(
        id ->
            handle
                .createUpdate("DELETE FROM splits WHERE trip = :trip AND id = :id")
                .bind("trip", trip)
                .bind("id", id)
                .execute());
  }

  private static void eraseReadings(Handle handle, Documents documents, String trip, String hiker) {
    List<String> naming =
        handle
            .createQuery("SELECT id, sealed FROM readings WHERE trip = :trip")
            .bind("trip", trip)
            .map((row, context) -> Map.entry(row.getString("id"), row.getBytes("sealed")))
            .stream()
            .filter(
                each ->
                    documents
                        .reading(trip, each.getKey(), each.getValue())
                        .weighed()
                        .of()
                        .filter(hiker::equals)
                        .isPresent())
            .map(Map.Entry::getKey)
            .toList();
    naming.forEach(
        id ->
            handle
                .createUpdate("DELETE FROM readings WHERE trip = :trip AND id = :id")
                .bind("trip", trip)
                .bind("id", id)
                .execute());
  }

  private static boolean names(Trip trip, String hiker) {
    return trip.hikers().stream().anyMatch(h -> h.id().equals(hiker));
  }

  private static boolean names(Split split, String hiker) {
    return split.carries().stream().anyMatch(c -> c.hiker().equals(hiker))
        || split.opened().stream().anyMatch(o -> o.hiker().equals(hiker))
        || split.handoversAtCamp().stream()
            .anyMatch(h -> h.from().equals(hiker) || h.to().equals(hiker));
  }
}
