package dev.faircarry.faults;

import dev.faircarry.store.Seal;
import dev.faircarry.store.Stores;
import java.util.List;

/** On a SQLite file. */
class ManyEditorsSqliteTest extends ManyEditorsContract {
  @Override
  List<Service> services() throws Exception {
    Seal seal = Seal.ofKeyset(Seal.newKeyset());
    return List.of(new Service(Stores.sqlite(folder.resolve("trips.db"), seal)));
  }
}
