package dev.faircarry.store;

import dev.faircarry.access.Link;
import dev.faircarry.access.Role;
import dev.faircarry.access.TokenHash;
import dev.faircarry.app.LinkStore;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Links as rows. */
final class SqlLinks implements LinkStore {
  private final Work work;

  SqlLinks(Work work) {
    this.work = work;
  }

  @Override
  public void add(Link link, TokenHash hash) {
    work.write(
        handle ->
            handle
                .createUpdate(
                    "INSERT INTO links"
                        + " (id, trip, hash, role, hiker, own, created_at, expires_at, revoked_at)"
                        + " VALUES (:id, :trip, :hash, :role, :hiker, :own, :created, :expires,"
                        + " :revoked)")
                .bind("id", link.id())
                .bind("trip", link.trip())
                .bind("hash", hash.hex())
                .bind("role", link.role().name())
                .bind("hiker", link.hiker())
                .bind("own", link.own() ? 1 : 0)
                .bind("created", link.created().toEpochMilli())
                .bind("expires", link.expires().map(Instant::toEpochMilli))
                .bind("revoked", link.revoked().map(Instant::toEpochMilli))
                .execute());
  }

  @Override
  public Optional<Kept> find(String linkId) {
    return work.unchanged()
        .map(unchanged -> unchanged.links().get(linkId, () -> read(linkId)))
        .orElseGet(() -> read(linkId));
  }

  private Optional<Kept> read(String linkId) {
    return work.read(
        handle ->
            handle
                .createQuery("SELECT * FROM links WHERE id = :id")
                .bind("id", linkId)
                .map((row, context) -> new Kept(link(row), new TokenHash(row.getString("hash"))))
                .findOne());
  }

  @Override
  public List<Link> of(String trip) {
    return work.read(
        handle ->
            handle
                .createQuery("SELECT * FROM links WHERE trip = :trip ORDER BY created_at, id")
                .bind("trip", trip)
                .map((row, context) -> link(row))
                .list());
  }

  @Override
  public boolean revoke(String trip, String linkId, Instant at) {
    return work.write(
            handle ->
                handle
                    .createUpdate(
                        "UPDATE links SET revoked_at = :at"
                            + " WHERE trip = :trip AND id = :id AND revoked_at IS NULL")
                    .bind("trip", trip)
                    .bind("id", linkId)
                    .bind("at", at.toEpochMilli())
                    .execute())
        > 0;
  }

  private static Link link(ResultSet row) throws SQLException {
    return new Link(
        row.getString("id"),
        row.getString("trip"),
        Role.valueOf(row.getString("role")),
        Optional.ofNullable(row.getString("hiker")),
        row.getInt("own") == 1,
        Instant.ofEpochMilli(row.getLong("created_at")),
        Rows.time(row, "expires_at"),
        Rows.time(row, "revoked_at"));
  }
}
