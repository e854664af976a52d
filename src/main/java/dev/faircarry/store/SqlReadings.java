package dev.faircarry.store;

import dev.faircarry.app.ReadingStore;
import dev.faircarry.app.StoredReading;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Readings as rows. */
final class SqlReadings implements ReadingStore {
  private final Work work;
  private final Documents documents;

  SqlReadings(Work work, Documents documents) {
    this.work = work;
    this.documents = documents;
  }

  @Override
  public boolean add(String trip, List<StoredReading> readings, int most) {
    return work.write(
        handle -> {
          if (!OfTrip.held(handle, trip) || count(handle, trip) + readings.size() > most) {
            return false;
          }
          readings.forEach(reading -> add(handle, trip, reading));
          return true;
        });
  }

  private static int count(Handle handle, String trip) {
    return handle
        .createQuery("SELECT count(*) FROM readings WHERE trip = :trip")
        .bind("trip", trip)
        .mapTo(Integer.class)
        .one();
  }

  private void add(Handle handle, String trip, StoredReading reading) {
    handle
        .createUpdate(
            "INSERT INTO readings (trip, id, place, split, at, by_role, by_hiker, sealed)"
                + " SELECT :trip, :id, coalesce(max(place), 0) + 1, :split, :at, :role, :hiker,"
                + " :sealed FROM readings WHERE trip = :trip")
        .bind("trip", trip)
        .bind("id", reading.id())
        .bind("split", reading.split())
        .bind("at", reading.at().toEpochMilli())
        .bind("role", reading.by().role().name())
        .bind("hiker", reading.by().hiker())
        .bind("sealed", documents.reading(trip, reading.id(), reading.reading()))
        .execute();
  }

  @Override
  public List<StoredReading> of(String trip) {
    return work.read(
        handle ->
            handle
                .createQuery("SELECT * FROM readings WHERE trip = :trip ORDER BY place")
                .bind("trip", trip)
                .map((row, context) -> reading(row))
                .list());
  }

  @Override
  public List<StoredReading> page(String trip, Optional<String> before, int limit) {
    return work.read(
        handle ->
            OfTrip.page(handle, "readings", trip, before, limit, (row, context) -> reading(row)));
  }

  private StoredReading reading(ResultSet row) throws SQLException {
    String trip = row.getString("trip");
    String id = row.getString("id");
    return new StoredReading(
        id,
        trip,
        Optional.ofNullable(row.getString("split")),
        Instant.ofEpochMilli(row.getLong("at")),
        Rows.author(row),
        documents.reading(trip, id, row.getBytes("sealed")));
  }
}
