package dev.faircarry.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.Statement;
import org.junit.jupiter.api.AfterEach;

/** kill -9 with a PostgreSQL server. */
class KillPostgresTest extends KillContract {
  private PostgresServer server;

  @Override
  Program.Setup setup() throws Exception {
    server = new PostgresServer(folder);
    return Program.Setup.postgres(folder, server.newDatabase("trips"));
  }

  @AfterEach
  void end() throws Exception {
    server.close();
  }

  @Override
  void intact() throws Exception {
    try (Connection connection = server.connect("trips");
        Statement statement = connection.createStatement();
        ResultSet gaps =
            statement.executeQuery(
                "SELECT count(*) FROM trips t WHERE t.head <> (SELECT count(*) FROM revisions r"
                    + " WHERE r.trip = t.id) OR t.head <> (SELECT max(number) FROM revisions r"
                    + " WHERE r.trip = t.id)")) {
      gaps.next();
      assertEquals(0, gaps.getInt(1));
    }
  }
}
