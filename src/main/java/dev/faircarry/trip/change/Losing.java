package dev.faircarry.trip.change;

import dev.faircarry.trip.Form;
import java.util.List;
import java.util.Optional;

/** What is left of an item when it, a part of it, or some of its units are gone. */
final class Losing implements Form.Cases<Losing.Left> {
  /**
   * What is left.
   *
   * @param form empty when nothing is left
   * @param fault why it cannot be
   */
  record Left(Optional<Form> form, Optional<ChangeFault.Kind> fault) {
    static final Left NOTHING = new Left(Optional.empty(), Optional.empty());

    static Left of(Form form) {
      return new Left(Optional.of(form), Optional.empty());
    }

    static Left wrong(ChangeFault.Kind kind) {
      return new Left(Optional.empty(), Optional.of(kind));
    }
  }

  private final Change.ItemGone change;

  Losing(Change.ItemGone change) {
    this.change = change;
  }

  @Override
  public Left whole(Form.Whole form) {
    if (change.piece().part().isPresent()) {
      return Left.wrong(ChangeFault.Kind.UNKNOWN_PIECE);
    }
    return change.units().isPresent() ? Left.wrong(ChangeFault.Kind.NOT_COUNTED) : Left.NOTHING;
  }

  @Override
  public Left parts(Form.Parts form) {
    if (change.units().isPresent()) {
      return Left.wrong(ChangeFault.Kind.NOT_COUNTED);
    }
    if (change.piece().part().isEmpty()) {
      return Left.NOTHING;
    }
    String gone = change.piece().part().get();
    List<Form.Part> left = form.parts().stream().filter(p -> !p.id().equals(gone)).toList();
    if (left.size() == form.parts().size()) {
      return Left.wrong(ChangeFault.Kind.UNKNOWN_PIECE);
    }
    return left.isEmpty() ? Left.NOTHING : Left.of(new Form.Parts(left));
  }

  @Override
  public Left counted(Form.Counted form) {
    if (change.piece().part().isPresent()) {
      return Left.wrong(ChangeFault.Kind.UNKNOWN_PIECE);
    }
    if (change.units().isEmpty()) {
      return Left.NOTHING;
    }
    if (!(form.quantity() instanceof Form.Quantity.Fixed fixed)) {
      return Left.wrong(ChangeFault.Kind.NOT_COUNTED);
    }
    int gone = change.units().getAsInt();
    if (gone < 1 || gone > fixed.count()) {
      return Left.wrong(ChangeFault.Kind.TOO_MANY_UNITS);
    }
    if (gone == fixed.count()) {
      return Left.NOTHING;
    }
    return Left.of(
        new Form.Counted(
            new Form.Quantity.Fixed(fixed.count() - gone),
            form.unitMass(),
            form.massFrom(),
            form.unitVolume(),
            form.stow(),
            form.use()));
  }
}
