package dev.faircarry.store;

import dev.faircarry.app.StoredSplit;
import dev.faircarry.split.Outcome;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Splits as rows, within transactions that others begin. */
final class SqlSplits {
  private final Documents documents;

  SqlSplits(Documents documents) {
    this.documents = documents;
  }

  /** Keeps a split; false when its trip is gone. */
  boolean add(Handle handle, StoredSplit split) {
    if (!OfTrip.held(handle, split.trip())) {
      return false;
    }
    handle
        .createUpdate(
            "INSERT INTO splits (trip, id, place, revision, at, by_role, by_hiker, sealed)"
                + " SELECT :trip, :id, coalesce(max(place), 0) + 1, :revision, :at, :role, :hiker,"
                + " :sealed FROM splits WHERE trip = :trip")
        .bind("trip", split.trip())
        .bind("id", split.id())
        .bind("revision", split.revision())
        .bind("at", split.at().toEpochMilli())
        .bind("role", split.by().role().name())
        .bind("hiker", split.by().hiker())
        .bind("sealed", documents.split(split.trip(), split.id(), split.split(), split.proof()))
        .execute();
    return true;
  }

  Optional<StoredSplit> find(Handle handle, String trip, String id) {
    return handle
        .createQuery("SELECT * FROM splits WHERE trip = :trip AND id = :id")
        .bind("trip", trip)
        .bind("id", id)
        .map((row, context) -> split(row))
        .findOne();
  }

  List<StoredSplit> page(Handle handle, String trip, Optional<String> before, int limit) {
    return OfTrip.page(handle, "splits", trip, before, limit, (row, context) -> split(row));
  }

  private StoredSplit split(ResultSet row) throws SQLException {
    String trip = row.getString("trip");
    String id = row.getString("id");
    Outcome.Solved kept = documents.split(trip, id, row.getBytes("sealed"));
    return new StoredSplit(
        id,
        trip,
        row.getInt("revision"),
        Instant.ofEpochMilli(row.getLong("at")),
        Rows.author(row),
        kept.split(),
        Documents.stated(kept.proof()));
  }
}
