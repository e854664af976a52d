package dev.faircarry.store;

import dev.faircarry.app.Store;

/** The queue on a real PostgreSQL server. */
class PostgresJobsTest extends JobContract {
  private final String address = Postgres.newDatabase();

  @Override
  Store open() {
    return Stores.postgres(address, StoreContract.SEAL);
  }
}
