package dev.faircarry.housefixture.app;

import ch.qos.logback.classic.Level;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvRecord;
import dev.faircarry.housefixture.Wiring;
import io.javalin.Javalin;
import jakarta.servlet.Servlet;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.net.http.HttpClient;
import java.sql.Connection;
import javax.sql.DataSource;
import org.chocosolver.solver.Model;
import org.eclipse.jetty.server.Server;

/** Looks up to the wiring, and takes every library from the package that owns it. */
public final class AppBreaksRules {
  Model model;
  ObjectMapper mapper;
  CsvRecord row;
  Javalin javalin;
  Server server;
  Servlet servlet;
  Level level;
  HttpClient client;
  Connection connection;
  DataSource source;

  Object madeFromWhatIsSent(ObjectInputStream in) throws IOException, ClassNotFoundException {
    return in.readObject();
  }

  void lookUp() {
    Wiring.touch();
  }
}
