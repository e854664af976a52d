package dev.faircarry.store;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/** What tables have in common whose rows belong to a trip and have a place in its order. */
final class OfTrip {
  private OfTrip() {}

  /**
   * Keeps others from adding to this trip until the transaction ends; without that, two who count
   * at the same time would give the same place.
   *
   * @return whether the trip is there
   */
  static boolean held(Handle handle, String trip) {
    return handle
            .createUpdate("UPDATE trips SET head = head WHERE id = :trip AND erase_at IS NULL")
            .bind("trip", trip)
            .execute()
        > 0;
  }

  /**
   * The newest rows, the newest first.
   *
   * @param before id of the row to begin behind; none for the first page
   */
  static <T> List<T> page(
      Handle handle,
      String table,
      String trip,
      Optional<String> before,
      int limit,
      RowMapper<T> mapper) {
    return handle
        .createQuery(
            "SELECT * FROM <table> WHERE trip = :trip AND place < coalesce((SELECT place"
                + " FROM <table> WHERE trip = :trip AND id = :before), "
                + Integer.MAX_VALUE
                + ") ORDER BY place DESC LIMIT :limit")
        .define("table", table)
        .bind("trip", trip)
        .bind("before", before.orElse(""))
        .bind("limit", limit)
        .map(mapper)
        .list();
  }
}
