package dev.faircarry.trip.change;

import dev.faircarry.trip.Form;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An item one of whose pieces weighs something else. */
final class Weighing implements Form.Cases<Weighing.Left> {
  /** The form with the new mass, or why there is none. */
  record Left(Optional<Form> form, Optional<ChangeFault.Kind> fault) {
    static Left of(Form form) {
      return new Left(Optional.of(form), Optional.empty());
    }

    static Left wrong(ChangeFault.Kind kind) {
      return new Left(Optional.empty(), Optional.of(kind));
    }
  }

  private final Change.ItemWeighs change;

  Weighing(Change.ItemWeighs change) {
    this.change = change;
  }

  @Override
  public Left whole(Form.Whole form) {
    if (change.piece().part().isPresent()) {
      return Left.wrong(ChangeFault.Kind.UNKNOWN_PIECE);
    }
    return Left.of(
        new Form.Whole(
            change.mass(),
            change.massFrom(),
            form.volume(),
            form.stow(),
            form.use(),
            form.contains()));
  }

  @Override
  public Left parts(Form.Parts form) {
    if (change.piece().part().isEmpty()) {
      return Left.wrong(ChangeFault.Kind.NAME_A_PART);
    }
    List<Form.Part> parts = new ArrayList<>();
    boolean found = false;
    for (Form.Part part : form.parts()) {
      boolean it = part.id().equals(change.piece().part().get());
      found |= it;
      parts.add(
          it
              ? new Form.Part(
                  part.id(),
                  part.name(),
                  change.mass(),
                  change.massFrom(),
                  part.volume(),
                  part.stow())
              : part);
    }
    return found ? Left.of(new Form.Parts(parts)) : Left.wrong(ChangeFault.Kind.UNKNOWN_PIECE);
  }

  @Override
  public Left counted(Form.Counted form) {
    if (change.piece().part().isPresent()) {
      return Left.wrong(ChangeFault.Kind.UNKNOWN_PIECE);
    }
    return Left.of(
        new Form.Counted(
            form.quantity(),
            change.mass(),
            change.massFrom(),
            form.unitVolume(),
            form.stow(),
            form.use()));
  }
}
