package dev.faircarry.app;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import java.util.HashMap;
import java.util.Map;

/** The names people know, by the ids documents use; an unknown id stands for itself. */
public final class TripNames {
  private final Map<String, String> hikers = new HashMap<>();
  private final Map<PieceRef, String> pieces = new HashMap<>();

  public TripNames(Trip trip) {
    for (Hiker hiker : trip.hikers()) {
      hikers.put(hiker.id(), hiker.name());
    }
    for (SharedItem item : trip.shared()) {
      pieces.put(PieceRef.item(item.id()), item.name());
      if (item.form() instanceof Form.Parts parts) {
        for (Form.Part part : parts.parts()) {
          pieces.put(PieceRef.part(item.id(), part.id()), item.name() + ": " + part.name());
        }
      }
    }
  }

  public String hiker(String id) {
    return hikers.getOrDefault(id, id);
  }

  /** {@code "Two-pole shelter: fly"} for a part. */
  public String piece(PieceRef piece) {
    return pieces.getOrDefault(piece, piece.text());
  }
}
