package dev.faircarry.store;

import dev.faircarry.app.Job;
import dev.faircarry.app.JobStore;
import dev.faircarry.app.StoredSplit;
import dev.faircarry.split.Outcome;
import dev.faircarry.split.Progress;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The queue as rows, shared by way of row locks on PostgreSQL and the one writer on SQLite. */
final class SqlJobs implements JobStore {
  private static final String OPEN = "state IN ('WAITING', 'RUNNING')";

  /** Any number of our own: names the lock that counting the queue takes. */
  private static final long QUEUE_LOCK = 0x66616972L;

  private final Work work;
  private final Documents documents;
  private final SqlSplits splits;

  SqlJobs(Work work, Documents documents) {
    this.work = work;
    this.documents = documents;
    this.splits = new SqlSplits(documents);
  }

  @Override
  public boolean enqueue(Job job, int most) {
    return work.write(
        handle -> {
          if (work.postgres()) {
            handle.execute("SELECT pg_advisory_xact_lock(" + QUEUE_LOCK + ")");
          }
          if (open(handle) >= most) {
            return false;
          }
          handle
              .createUpdate(
                  "INSERT INTO jobs (id, trip, revision, effort, by_role, by_hiker, asked_at,"
                      + " state, attempt, stop_asked) VALUES (:id, :trip, :revision, :effort,"
                      + " :role, :hiker, :at, 'WAITING', 0, 0)")
              .bind("id", job.id())
              .bind("trip", job.trip())
              .bind("revision", job.revision())
              .bind("effort", job.effortSteps())
              .bind("role", job.by().role().name())
              .bind("hiker", job.by().hiker())
              .bind("at", job.asked().toEpochMilli())
              .execute();
          return true;
        });
  }

  @Override
  public Optional<Job> find(String trip, String id) {
    return work.read(
        handle ->
            handle
                .createQuery("SELECT * FROM jobs WHERE trip = :trip AND id = :id")
                .bind("trip", trip)
                .bind("id", id)
                .map((row, context) -> job(row))
                .findOne());
  }

  @Override
  public int open() {
    return work.read(SqlJobs::open);
  }

  private static int open(Handle handle) {
    return handle.createQuery("SELECT count(*) FROM jobs WHERE " + OPEN).mapTo(Integer.class).one();
  }

  @Override
  public Optional<Job> take(String instance, Instant now, Duration lease, int most) {
    return work.write(
        handle -> {
          handle
              .createUpdate(
                  "UPDATE jobs SET state = 'FAILED', instance = NULL, lease_until = NULL WHERE "
                      + OPEN
                      + " AND attempt >= :most AND (lease_until IS NULL OR lease_until < :now)")
              .bind("most", most)
              .bind("now", now.toEpochMilli())
              .execute();
          Optional<String> id =
              handle
                  .createQuery(
                      "SELECT id FROM jobs WHERE "
                          + OPEN
                          + " AND (lease_until IS NULL OR lease_until < :now)"
                          + " ORDER BY asked_at, id LIMIT 1"
                          + (work.postgres() ? " FOR UPDATE SKIP LOCKED" : ""))
                  .bind("now", now.toEpochMilli())
                  .mapTo(String.class)
                  .findOne();
          return id.flatMap(found -> begin(handle, found, instance, now.plus(lease)));
        });
  }

  private Optional<Job> begin(Handle handle, String id, String instance, Instant until) {
    handle
        .createUpdate(
            "UPDATE jobs SET state = 'RUNNING', attempt = attempt + 1, instance = :instance,"
                + " lease_until = :until WHERE id = :id")
        .bind("id", id)
        .bind("instance", instance)
        .bind("until", until.toEpochMilli())
        .execute();
    return handle
        .createQuery("SELECT * FROM jobs WHERE id = :id")
        .bind("id", id)
        .map((row, context) -> job(row))
        .findOne();
  }

  @Override
  public Renewal renew(
      String id, int attempt, Instant now, Duration lease, Optional<Progress> progress) {
    return work.write(
        handle -> {
          int renewed =
              handle
                  .createUpdate(
                      "UPDATE jobs SET lease_until = :until, progress = coalesce(:progress,"
                          + " progress)"
                          + " WHERE id = :id AND attempt = :attempt AND state = 'RUNNING'")
                  .bind("id", id)
                  .bind("attempt", attempt)
                  .bind("until", now.plus(lease).toEpochMilli())
                  .bind("progress", progress.map(p -> documents.progress(id, p)).orElse(null))
                  .execute();
          if (renewed == 0) {
            return Renewal.LOST;
          }
          boolean stop =
              handle
                      .createQuery("SELECT stop_asked FROM jobs WHERE id = :id")
                      .bind("id", id)
                      .mapTo(Integer.class)
                      .one()
                  != 0;
          return stop ? Renewal.STOP : Renewal.GO_ON;
        });
  }

  @Override
  public boolean finish(String id, int attempt, Instant at, Outcome outcome) {
    return work.write(
        handle -> {
          int done =
              handle
                  .createUpdate(
                      "UPDATE jobs SET state = 'DONE', outcome = :outcome, instance = NULL,"
                          + " lease_until = NULL"
                          + " WHERE id = :id AND attempt = :attempt AND state = 'RUNNING'")
                  .bind("id", id)
                  .bind("attempt", attempt)
                  .bind("outcome", documents.outcome(id, outcome))
                  .execute();
          if (done == 0) {
            return false;
          }
          if (outcome instanceof Outcome.Solved solved) {
            addSplit(handle, id, at, solved);
          }
          return true;
        });
  }

  private void addSplit(Handle handle, String id, Instant at, Outcome.Solved solved) {
    Job job =
        handle
            .createQuery("SELECT * FROM jobs WHERE id = :id")
            .bind("id", id)
            .map((row, context) -> job(row))
            .one();
    splits.add(
        handle,
        new StoredSplit(
            id,
            job.trip(),
            job.revision(),
            at,
            job.by(),
            solved.split(),
            Optional.of(solved.proof())));
  }

  @Override
  public void handBack(String id, int attempt) {
    work.write(
        handle ->
            handle
                .createUpdate(
                    "UPDATE jobs SET state = 'WAITING', instance = NULL, lease_until = NULL"
                        + " WHERE id = :id AND attempt = :attempt AND state = 'RUNNING'")
                .bind("id", id)
                .bind("attempt", attempt)
                .execute());
  }

  @Override
  public boolean stop(String trip, String id) {
    return work.write(
            handle ->
                handle
                    .createUpdate(
                        "UPDATE jobs SET stop_asked = 1 WHERE trip = :trip AND id = :id AND "
                            + OPEN)
                    .bind("trip", trip)
                    .bind("id", id)
                    .execute())
        > 0;
  }

  private Job job(ResultSet row) throws SQLException {
    String id = row.getString("id");
    return new Job(
        id,
        row.getString("trip"),
        row.getInt("revision"),
        row.getLong("effort"),
        Rows.author(row),
        Instant.ofEpochMilli(row.getLong("asked_at")),
        Job.State.valueOf(row.getString("state")),
        row.getInt("attempt"),
        row.getInt("stop_asked") != 0,
        Rows.bytes(row, "progress").map(kept -> documents.progress(id, kept)),
        Rows.bytes(row, "outcome").map(kept -> documents.outcome(id, kept)));
  }
}
