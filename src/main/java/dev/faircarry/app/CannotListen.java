package dev.faircarry.app;

/** The service cannot listen on the address and port it was given. */
public final class CannotListen extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public CannotListen(Throwable cause) {
    super("cannot listen", cause);
  }
}
