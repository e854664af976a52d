package dev.faircarry;

import dev.faircarry.cli.HandedLink;
import dev.faircarry.http.KeptParts;
import java.util.List;

/**
 * What keeps trips while the service runs.
 *
 * @param parts what the HTTP service needs
 * @param links to print when the service has begun; none but for a demo trip
 */
record Kept(KeptParts parts, List<HandedLink> links) {
  Kept {
    links = List.copyOf(links);
  }
}
