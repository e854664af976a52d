package dev.faircarry;

import dev.faircarry.cli.HandedLink;
import dev.faircarry.http.KeptParts;
import java.util.List;

/** What keeps trips while the service runs. */
interface Kept extends AutoCloseable {
  /** What the HTTP service needs. */
  KeptParts parts();

  /** Links to print when the service has begun; none but for a demo trip. */
  List<HandedLink> links();

  @Override
  void close();
}
