package dev.faircarry.http;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every address of the service stands in the contract, and every operation there is answered. */
class ContractAddressesTest {

  @Test
  void contractAndServiceHaveTheSameAddresses(@TempDir Path directory) throws IOException {
    TreeSet<String> registered = new TreeSet<>();
    try (KeptService service = new KeptService(directory, Optional.empty(), false)) {
      service
          .addresses()
          .forEach((path, methods) -> methods.forEach(m -> registered.add(path + " " + m)));
    }
    // Files that the pages load by themselves are no part of what a client is promised.
    registered.removeIf(address -> address.matches("/(docs|assets|page)/.*"));
    TreeSet<String> documented = new TreeSet<>();
    for (Map.Entry<String, JsonNode> path : Contract.document().path("paths").properties()) {
      path.getValue()
          .fieldNames()
          .forEachRemaining(
              field -> {
                if (!field.equals("parameters") && !path.getKey().startsWith("/page/")) {
                  documented.add(path.getKey() + " " + field.toUpperCase(Locale.ROOT));
                }
              });
    }
    assertEquals(String.join("\n", registered), String.join("\n", documented));
  }
}
