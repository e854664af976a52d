package dev.faircarry.faults;

import dev.faircarry.store.Seal;
import dev.faircarry.store.Stores;
import java.util.List;
import org.junit.jupiter.api.AfterEach;

/** On a PostgreSQL server, through two instances. */
class ManyEditorsPostgresTest extends ManyEditorsContract {
  private PostgresServer server;

  @Override
  List<Service> services() throws Exception {
    server = new PostgresServer(folder);
    String url = server.newDatabase("trips");
    Seal seal = Seal.ofKeyset(Seal.newKeyset());
    return List.of(
        new Service(Stores.postgres(url, seal)), new Service(Stores.postgres(url, seal)));
  }

  @AfterEach
  void end() throws Exception {
    server.close();
  }
}
