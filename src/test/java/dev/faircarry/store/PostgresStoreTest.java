package dev.faircarry.store;

import dev.faircarry.app.Store;

/** The contract on a real PostgreSQL server. */
class PostgresStoreTest extends StoreContract {
  private final String address = Postgres.newDatabase();

  @Override
  Store open() {
    return Stores.postgres(address, SEAL);
  }
}
