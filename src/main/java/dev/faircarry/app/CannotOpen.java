package dev.faircarry.app;

/** The store, or the keys of what is in it, cannot be used; nothing has been started. */
public final class CannotOpen extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String code;

  /**
   * @param message a sentence for whoever starts the program; never a secret
   */
  public CannotOpen(String code, String message, Throwable cause) {
    super(message, cause);
    this.code = code;
  }

  /** What cannot be used: {@code database}, {@code key-file}, ... */
  public String code() {
    return code;
  }
}
