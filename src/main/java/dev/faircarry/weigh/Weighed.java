package dev.faircarry.weigh;

import dev.faircarry.trip.PieceRef;
import java.util.Optional;

/** What lay on the scale. */
public sealed interface Weighed {

  /** Its name among what was weighed: {@code "kit/asha/quilt"}. */
  String text();

  /** Whose pack or thing it is; empty for shared pieces. */
  Optional<String> of();

  /** A hiker's pack on the first morning with everything in and on it. */
  record WholePack(String hiker) implements Weighed {
    @Override
    public String text() {
      return "whole-pack/" + hiker;
    }

    @Override
    public Optional<String> of() {
      return Optional.of(hiker);
    }
  }

  /** A hiker's empty pack. */
  record EmptyPack(String hiker) implements Weighed {
    @Override
    public String text() {
      return "empty-pack/" + hiker;
    }

    @Override
    public Optional<String> of() {
      return Optional.of(hiker);
    }
  }

  /** A thing of a hiker's own. */
  record OfKit(String hiker, String item) implements Weighed {
    @Override
    public String text() {
      return "kit/" + hiker + "/" + item;
    }

    @Override
    public Optional<String> of() {
      return Optional.of(hiker);
    }
  }

  /** A shared piece, or one unit of a counted item. */
  record Piece(PieceRef piece) implements Weighed {
    @Override
    public String text() {
      return "piece/" + piece.text();
    }

    @Override
    public Optional<String> of() {
      return Optional.empty();
    }
  }
}
