package dev.faircarry.store;

import dev.faircarry.app.ReplyStore;
import java.time.Instant;
import java.util.Optional;

/** Remembered answers as rows. */
final class SqlReplies implements ReplyStore {
  private final Work work;
  private final Documents documents;

  SqlReplies(Work work, Documents documents) {
    this.work = work;
    this.documents = documents;
  }

  @Override
  public Optional<Reply> find(String scope, String key, Instant notBefore) {
    return work.read(
        handle ->
            handle
                .createQuery(
                    "SELECT request, status, location, sealed FROM replies"
                        + " WHERE scope = :scope AND reply_key = :key AND at >= :from")
                .bind("scope", scope)
                .bind("key", key)
                .bind("from", notBefore.toEpochMilli())
                .map(
                    (row, context) ->
                        new Reply(
                            row.getString("request"),
                            row.getInt("status"),
                            row.getString("location"),
                            documents.openedReply(scope, key, row.getBytes("sealed"))))
                .findOne());
  }

  @Override
  public void remember(String scope, String key, Reply reply, Instant at) {
    work.write(
        handle -> {
          handle
              .createUpdate("DELETE FROM replies WHERE scope = :scope AND reply_key = :key")
              .bind("scope", scope)
              .bind("key", key)
              .execute();
          return handle
              .createUpdate(
                  "INSERT INTO replies (scope, reply_key, at, request, status, location, sealed)"
                      + " VALUES (:scope, :key, :at, :request, :status, :location, :sealed)")
              .bind("scope", scope)
              .bind("key", key)
              .bind("at", at.toEpochMilli())
              .bind("request", reply.request())
              .bind("status", reply.status())
              .bind("location", reply.location())
              .bind("sealed", documents.reply(scope, key, reply.body()))
              .execute();
        });
  }

  @Override
  public int forget(Instant before) {
    return work.write(
        handle ->
            handle
                .createUpdate("DELETE FROM replies WHERE at < :before")
                .bind("before", before.toEpochMilli())
                .execute());
  }
}
