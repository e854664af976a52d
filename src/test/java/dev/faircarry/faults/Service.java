package dev.faircarry.faults;

import dev.faircarry.Keeping;
import dev.faircarry.Main;
import dev.faircarry.app.Checked;
import dev.faircarry.app.SplitTrip;
import dev.faircarry.app.Store;
import dev.faircarry.http.KeptParts;
import dev.faircarry.http.Server;
import dev.faircarry.solve.SplitSolver;
import java.util.Optional;

/** The service within the test's own process, answering as often as it is asked. */
final class Service implements AutoCloseable {
  private final Keeping keeping;
  private final Server server;

  Service(Store store) {
    keeping =
        Keeping.of(
            store,
            new SplitTrip(SplitSolver::solve, new Checked(), System::nanoTime),
            Optional.empty());
    KeptParts kept = keeping.parts();
    server =
        Main.server(
            "127.0.0.1",
            0,
            Optional.of(new KeptParts(kept.trips(), kept.wake(), Optional.empty(), false)));
  }

  int port() {
    return server.port();
  }

  @Override
  public void close() {
    server.close();
    keeping.close();
  }
}
