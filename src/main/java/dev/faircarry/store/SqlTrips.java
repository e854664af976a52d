package dev.faircarry.store;

import dev.faircarry.app.Author;
import dev.faircarry.app.Change;
import dev.faircarry.app.ChangeResult;
import dev.faircarry.app.RevisionLine;
import dev.faircarry.app.StoredSplit;
import dev.faircarry.app.StoredTrip;
import dev.faircarry.app.TripState;
import dev.faircarry.app.TripStore;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Trips and revisions as rows. Times are milliseconds since 1970, UTC. */
final class SqlTrips implements TripStore {
  private static final String COLUMNS =
      "SELECT t.id, t.head, t.erase_at, r.number, r.at, r.by_role, r.by_hiker, r.what, r.sealed,"
          + " r.document, r.kept_private, r.agreed FROM trips t JOIN revisions r ON r.trip = t.id ";

  private final Work work;
  private final Documents documents;
  private final SqlSplits splits;

  SqlTrips(Work work, Documents documents) {
    this.work = work;
    this.documents = documents;
    this.splits = new SqlSplits(documents);
  }

  @Override
  public void create(String id, TripState state, Author by, Instant at, String key) {
    work.write(
        handle -> {
          handle
              .createUpdate(
                  "INSERT INTO trips (id, head, payer, created_at) VALUES (:id, 1, :payer, :at)")
              .bind("id", id)
              .bind("payer", key)
              .bind("at", at.toEpochMilli())
              .execute();
          addRevision(handle, id, 1, new Change(0, state, by, at, "created"));
          return true;
        });
  }

  @Override
  public int countOf(String key) {
    return work.read(
        handle ->
            handle
                .createQuery("SELECT count(*) FROM trips WHERE payer = :payer")
                .bind("payer", key)
                .mapTo(Integer.class)
                .one());
  }

  @Override
  public Optional<StoredTrip> find(String id) {
    return work.unchanged()
        .map(unchanged -> unchanged.trips().get(id, () -> read(id)))
        .orElseGet(() -> read(id))
        .trip();
  }

  private Unchanged.Found read(String id) {
    return work.read(
        handle ->
            handle
                .createQuery(COLUMNS + "AND r.number = t.head WHERE t.id = :id")
                .bind("id", id)
                .map(
                    (row, context) ->
                        new Unchanged.Found(Optional.of(trip(row)), row.getBytes("sealed").length))
                .findOne()
                .orElse(Unchanged.Found.NOTHING));
  }

  @Override
  public Optional<StoredTrip> find(String id, int revision) {
    return work.read(
        handle ->
            handle
                .createQuery(
                    COLUMNS + "WHERE t.id = :id AND r.number = :number AND r.sealed IS NOT NULL")
                .bind("id", id)
                .bind("number", revision)
                .map((row, context) -> trip(row))
                .findOne());
  }

  @Override
  public ChangeResult change(String id, Change change) {
    return work.write(
        handle -> {
          int moved =
              handle
                  .createUpdate(
                      "UPDATE trips SET head = head + 1"
                          + " WHERE id = :id AND head = :expected AND erase_at IS NULL")
                  .bind("id", id)
                  .bind("expected", change.expected())
                  .execute();
          if (moved == 0) {
            return refused(handle, id);
          }
          addRevision(handle, id, change.expected() + 1, change);
          return new ChangeResult.Kept(change.expected() + 1);
        });
  }

  private static ChangeResult refused(Handle handle, String id) {
    return handle
        .createQuery("SELECT head FROM trips WHERE id = :id AND erase_at IS NULL")
        .bind("id", id)
        .mapTo(Integer.class)
        .findOne()
        .<ChangeResult>map(ChangeResult.Stale::new)
        .orElseGet(ChangeResult.Missing::new);
  }

  private void addRevision(Handle handle, String id, int number, Change change) {
    handle
        .createUpdate(
            "INSERT INTO revisions (trip, number, at, by_role, by_hiker, what, sealed, document,"
                + " kept_private, agreed) VALUES (:trip, :number, :at, :role, :hiker, :what,"
                + " :sealed, :document, :kept, :agreed)")
        .bind("trip", id)
        .bind("number", number)
        .bind("at", change.at().toEpochMilli())
        .bind("role", change.by().role().name())
        .bind("hiker", change.by().hiker())
        .bind("what", change.what())
        .bind("sealed", documents.trip(id, number, change.next().trip()))
        .bind("document", change.document())
        .bind("kept", Documents.ids(change.next()))
        .bind("agreed", change.next().agreedSplit())
        .execute();
  }

  @Override
  public List<RevisionLine> history(String id, int before, int limit) {
    return work.read(
        handle ->
            handle
                .createQuery(
                    "SELECT number, at, by_role, by_hiker, what, sealed IS NULL AS erased"
                        + " FROM revisions WHERE trip = :id AND number < :before"
                        + " ORDER BY number DESC LIMIT :limit")
                .bind("id", id)
                .bind("before", before)
                .bind("limit", limit)
                .map((row, context) -> line(row, row.getBoolean("erased")))
                .list());
  }

  @Override
  public ChangeResult delete(String id, int expected, Instant eraseAt) {
    return work.write(
        handle -> {
          int marked =
              handle
                  .createUpdate(
                      "UPDATE trips SET erase_at = :at"
                          + " WHERE id = :id AND head = :expected AND erase_at IS NULL")
                  .bind("id", id)
                  .bind("expected", expected)
                  .bind("at", eraseAt.toEpochMilli())
                  .execute();
          return marked == 0 ? refused(handle, id) : new ChangeResult.Kept(expected);
        });
  }

  @Override
  public boolean restore(String id) {
    return work.write(
            handle ->
                handle
                    .createUpdate(
                        "UPDATE trips SET erase_at = NULL"
                            + " WHERE id = :id AND erase_at IS NOT NULL")
                    .bind("id", id)
                    .execute())
        > 0;
  }

  @Override
  public boolean erase(String id) {
    return work.write(
            handle ->
                handle.createUpdate("DELETE FROM trips WHERE id = :id").bind("id", id).execute())
        > 0;
  }

  @Override
  public int eraseDue(Instant now) {
    return work.write(
        handle ->
            handle
                .createUpdate("DELETE FROM trips WHERE erase_at <= :now")
                .bind("now", now.toEpochMilli())
                .execute());
  }

  @Override
  public void eraseHiker(String id, String hiker) {
    work.write(
        handle -> {
          HikerErasure.erase(handle, documents, id, hiker);
          return true;
        });
  }

  @Override
  public void addSplit(StoredSplit split) {
    work.write(handle -> splits.add(handle, split));
  }

  @Override
  public Optional<StoredSplit> split(String trip, String id) {
    return work.read(handle -> splits.find(handle, trip, id));
  }

  @Override
  public List<StoredSplit> splits(String trip, Optional<String> before, int limit) {
    return work.read(handle -> splits.page(handle, trip, before, limit));
  }

  private StoredTrip trip(ResultSet row) throws SQLException {
    String id = row.getString("id");
    RevisionLine line = line(row, false);
    TripState state =
        new TripState(
            documents.trip(id, line.number(), row.getBytes("sealed")),
            Documents.ids(row.getString("kept_private")),
            Optional.ofNullable(row.getString("agreed")));
    return new StoredTrip(
        id, line, row.getInt("head"), row.getInt("document"), state, Rows.time(row, "erase_at"));
  }

  private static RevisionLine line(ResultSet row, boolean erased) throws SQLException {
    return new RevisionLine(
        row.getInt("number"),
        Instant.ofEpochMilli(row.getLong("at")),
        Rows.author(row),
        row.getString("what"),
        erased);
  }
}
