package dev.faircarry.store;

import dev.faircarry.app.JobStore;
import dev.faircarry.app.LinkStore;
import dev.faircarry.app.ReadingStore;
import dev.faircarry.app.ReplyStore;
import dev.faircarry.app.Store;
import dev.faircarry.app.StoreTrouble;
import dev.faircarry.app.TripStore;
import java.util.function.Function;

/** A store on a database, or within one transaction of it. */
final class SqlStore implements Store {
  private final Work work;
  private final Documents documents;
  private final Runnable onClose;

  SqlStore(Work work, Documents documents, Runnable onClose) {
    this.work = work;
    this.documents = documents;
    this.onClose = onClose;
  }

  @Override
  public TripStore trips() {
    return new SqlTrips(work, documents);
  }

  @Override
  public LinkStore links() {
    return new SqlLinks(work);
  }

  @Override
  public ReplyStore replies() {
    return new SqlReplies(work, documents);
  }

  @Override
  public JobStore jobs() {
    return new SqlJobs(work, documents);
  }

  @Override
  public ReadingStore readings() {
    return new SqlReadings(work, documents);
  }

  @Override
  public <T> T atomically(Function<Store, T> doing) {
    return work.write(
        handle ->
            doing.apply(
                new SqlStore(new Work.Together(handle, work.postgres()), documents, () -> {})));
  }

  @Override
  public boolean ready() {
    try {
      return work.read(handle -> handle.createQuery("SELECT 1").mapTo(Integer.class).one() == 1);
    } catch (StoreTrouble e) {
      return false;
    }
  }

  /**
   * Opens one of the documents that are kept, if there is any.
   *
   * @throws Seal.WrongKey if it was kept with other keys
   */
  void requireKeys() {
    work.read(
        handle ->
            handle
                .createQuery(
                    "SELECT trip, number, sealed FROM revisions WHERE sealed IS NOT NULL LIMIT 1")
                .map(
                    (row, context) ->
                        documents.trip(
                            row.getString("trip"), row.getInt("number"), row.getBytes("sealed")))
                .findOne());
  }

  @Override
  public void close() {
    onClose.run();
  }
}
