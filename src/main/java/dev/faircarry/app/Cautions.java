package dev.faircarry.app;

import java.util.List;

/** What everybody is told who is shown a load. */
public final class Cautions {
  private Cautions() {}

  /** Short sentences, in the order of showing. */
  public static final List<String> TEXT =
      List.of(
          "A fraction of body weight is a convention, not medical advice; everybody may set a lower"
              + " one.",
          "Children, pregnancy, injury, illness, heat and height call for less, and for a"
              + " professional's word.",
          "Local rules on food storage, fire and fuel come first.",
          "Everybody keeps water, warmth, a rain shell, light, a whistle and some food in their own"
              + " pack.",
          "A party that can be separated needs its own means.");
}
