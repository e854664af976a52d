package dev.faircarry.cli;

/**
 * A link that is printed for somebody: a secret, for standard output and never for the log.
 *
 * @param whose who is to open it
 * @param path what stands behind the address of the service; begins with a slash
 */
public record HandedLink(String whose, String path) {
  /** Without the link: records end up in messages. */
  @Override
  public String toString() {
    return "HandedLink[" + whose + "]";
  }
}
