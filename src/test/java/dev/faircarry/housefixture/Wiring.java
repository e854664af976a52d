package dev.faircarry.housefixture;

/** Stands where the wiring stands: nobody may import it. */
public final class Wiring {
  private Wiring() {}

  public static void touch() {}
}
