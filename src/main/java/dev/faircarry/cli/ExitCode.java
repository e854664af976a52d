package dev.faircarry.cli;

/** What the program says to the shell. */
public enum ExitCode {
  /** The split is proved and within all caps; or: what was checked or weighed is fine. */
  FINE(0),
  /**
   * A split passes a cap, breaks a rule, or is not proved; the group is not ready; a reading
   * differs.
   */
  OVER_CAP_OR_UNPROVED(1),
  /** The rules cannot all hold. */
  IMPOSSIBLE(2),
  /** The document, a file or the command line is wrong. */
  BAD_INPUT(3),
  /** The program failed. */
  INTERNAL(4);

  private final int number;

  ExitCode(int number) {
    this.number = number;
  }

  public int number() {
    return number;
  }
}
