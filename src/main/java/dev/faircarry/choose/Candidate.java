package dev.faircarry.choose;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A thing that can be taken or left.
 *
 * @param ref {@code "filter"} a shared item, {@code "asha/lamp"} a thing of a kit, or the id of an
 *     offer
 * @param massMilligrams of each
 * @param priceHundredths to be paid for each; nothing for what is there
 * @param least how many are taken at least: 1 for what stays in any case
 * @param most how many there are
 * @param party of its carrier, when only that party has it; empty for shared gear
 * @param covers need to how much of it each meets
 * @param requires need to how much more of it each asks for
 * @param replaces refs of things that can stay when it is taken
 * @param free whether it may stay as soon as the needs are met without it; otherwise only something
 *     that replaces it lets it stay
 */
public record Candidate(
    String ref,
    Kind kind,
    String name,
    long massMilligrams,
    long priceHundredths,
    int least,
    int most,
    Optional<String> party,
    Map<String, Long> covers,
    Map<String, Long> requires,
    List<String> replaces,
    boolean free) {
  public Candidate {
    covers = Map.copyOf(covers);
    requires = Map.copyOf(requires);
    replaces = List.copyOf(replaces);
  }

  /** Where a thing comes from. */
  public enum Kind {
    SHARED,
    KIT,
    OFFER
  }

  /** How much of a need each meets. */
  public long covers(String need) {
    return covers.getOrDefault(need, 0L);
  }

  /** How much more of a need each asks for. */
  public long requires(String need) {
    return requires.getOrDefault(need, 0L);
  }

  /** How many of it the trip as it stands has. */
  public int present() {
    return kind == Kind.OFFER ? 0 : 1;
  }
}
