package dev.faircarry.cli;

import java.util.List;

/**
 * The service answers.
 *
 * @param links links to the demo trip; none where there is no such trip
 */
public record Begun(int port, List<HandedLink> links) {
  public Begun {
    links = List.copyOf(links);
  }
}
