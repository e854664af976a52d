package dev.faircarry.app.card;

import dev.faircarry.app.JudgedSplit;
import dev.faircarry.check.HikerLoads;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Contains;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Makes the cards of a split. */
public final class Cards {
  private final Trip trip;
  private final JudgedSplit judged;
  private final List<Passing> passings;

  private Cards(JudgedSplit judged, Optional<Split> earlier) {
    this.trip = judged.trip();
    this.judged = judged;
    this.passings = Passing.of(trip, judged.split(), earlier);
  }

  /**
   * A card for every hiker, in the order of the trip.
   *
   * @param judged a split that the check has read
   * @param earlier the split agreed on before, which says where things are now
   */
  public static List<Card> of(JudgedSplit judged, Optional<Split> earlier) {
    Cards cards = new Cards(judged, earlier);
    return judged.verdict().hikers().stream().map(cards::card).toList();
  }

  private Card card(HikerLoads loads) {
    String id = loads.hiker();
    Hiker hiker = trip.hikers().stream().filter(h -> h.id().equals(id)).findFirst().orElseThrow();
    return new Card(
        hiker,
        things(hiker),
        passings.stream()
            .filter(p -> p.from().equals(id))
            .map(p -> new Card.Gives(p.piece(), p.units(), p.to(), p.why()))
            .toList(),
        judged.split().handoversAtCamp().stream()
            .filter(h -> h.from().equals(id) || h.to().equals(id))
            .sorted(Comparator.comparingInt(h -> h.afterDay()))
            .toList(),
        judged.split().opened().stream().sorted(Comparator.comparingInt(o -> o.day())).toList(),
        loads,
        judged.verdict().findings().stream().filter(f -> f.hikers().contains(id)).toList());
  }

  private List<Card.Thing> things(Hiker hiker) {
    List<Card.Thing> things = new ArrayList<>();
    for (SharedItem item : trip.shared()) {
      for (Carry carry : judged.split().carries()) {
        if (carry.hiker().equals(hiker.id()) && carry.piece().item().equals(item.id())) {
          things.add(thing(hiker, item, carry));
        }
      }
    }
    return things;
  }

  private Card.Thing thing(Hiker hiker, SharedItem item, Carry carry) {
    Made made = item.form().match(new MadeOf(carry.piece()));
    return new Card.Thing(
        carry.piece(),
        carry.units(),
        Math.multiplyExact(made.milligrams(), carry.units()),
        made.stow(),
        item.onDays(),
        item.owner(),
        item.goesInto().map(kind -> containers(hiker, kind)).orElse(List.of()),
        passings.stream()
            .filter(p -> p.to().equals(hiker.id()) && p.piece().equals(carry.piece()))
            .map(p -> new Card.From(p.from(), p.units(), p.why()))
            .toList());
  }

  /** What this hiker carries that holds things of a kind. */
  private List<String> containers(Hiker hiker, String kind) {
    List<String> names = new ArrayList<>();
    hiker.kit().stream()
        .filter(k -> k.contains().filter(c -> isOf(c, kind)).isPresent())
        .forEach(k -> names.add(k.name()));
    for (Carry carry : judged.split().carries()) {
      if (carry.hiker().equals(hiker.id())) {
        trip.shared().stream()
            .filter(s -> s.id().equals(carry.piece().item()))
            .filter(s -> s.form() instanceof Form.Whole w && holds(w, kind))
            .forEach(s -> names.add(s.name()));
      }
    }
    return names;
  }

  private static boolean holds(Form.Whole whole, String kind) {
    return whole.contains().filter(c -> isOf(c, kind)).isPresent();
  }

  private static boolean isOf(Contains contains, String kind) {
    return contains.kind().equals(kind);
  }

  /** Mass of one unit and its place in the pack. */
  private record Made(long milligrams, Stow stow) {}

  private record MadeOf(PieceRef piece) implements Form.Cases<Made> {
    @Override
    public Made whole(Form.Whole form) {
      return new Made(form.mass().milligrams(), form.stow());
    }

    @Override
    public Made parts(Form.Parts form) {
      return form.parts().stream()
          .filter(part -> piece.part().filter(part.id()::equals).isPresent())
          .findFirst()
          .map(part -> new Made(part.mass().milligrams(), part.stow()))
          .orElseThrow();
    }

    @Override
    public Made counted(Form.Counted form) {
      return new Made(form.unitMass().milligrams(), form.stow());
    }
  }
}
