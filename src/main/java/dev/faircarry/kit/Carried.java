package dev.faircarry.kit;

import dev.faircarry.split.Carry;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.Pack;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A thing a hiker has on the first morning.
 *
 * @param ref {@code "asha/quilt"}, {@code "asha/pack"} for the pack itself, {@code "shelter/fly"}
 *     for shared pieces
 * @param massMilligrams on the first morning, all units together
 * @param where how it is stowed; empty for the pack itself and for what is worn
 * @param purpose what it is for
 * @param labelMilligrams what the maker claims, where the mass was weighed and both are known
 */
public record Carried(
    String ref,
    String name,
    long massMilligrams,
    MassFrom massFrom,
    Optional<Stow> where,
    boolean worn,
    boolean shared,
    String purpose,
    List<String> covers,
    boolean sleeps,
    Optional<Long> labelMilligrams) {
  public Carried {
    covers = List.copyOf(covers);
  }

  /** Purpose of the pack itself. */
  public static final String PACK = "pack";

  /** Purpose of what states none and shows none. */
  public static final String OTHER = "other";

  /** Everything a hiker has on the first morning: pack, kit, and the pieces a split gives. */
  static List<Carried> by(Trip trip, Hiker hiker, Split split) {
    List<Carried> all = new ArrayList<>();
    hiker.pack().ifPresent(pack -> all.add(pack(hiker, pack)));
    for (KitItem item : hiker.kit()) {
      all.add(kit(hiker, item));
    }
    for (Carry carry : split.carries()) {
      if (carry.hiker().equals(hiker.id())) {
        trip.shared().stream()
            .filter(item -> item.id().equals(carry.piece().item()) && item.thereOn(1))
            .findFirst()
            .flatMap(item -> piece(item, carry))
            .ifPresent(all::add);
      }
    }
    return all;
  }

  private static Carried pack(Hiker hiker, Pack pack) {
    return new Carried(
        hiker.id() + "/" + PACK,
        "Pack",
        pack.mass().milligrams(),
        pack.massFrom(),
        Optional.empty(),
        false,
        false,
        PACK,
        List.of(),
        false,
        pack.labelMass().map(m -> m.milligrams()));
  }

  private static Carried kit(Hiker hiker, KitItem item) {
    return new Carried(
        hiker.id() + "/" + item.id(),
        item.name(),
        item.mass().milligrams(),
        item.massFrom(),
        item.worn() ? Optional.empty() : Optional.of(item.stow()),
        item.worn(),
        false,
        purpose(
            item.purpose(), item.covers(), item.contains().map(c -> c.kind()), Optional.empty()),
        item.covers(),
        false,
        item.labelMass().map(m -> m.milligrams()));
  }

  private static Optional<Carried> piece(SharedItem item, Carry carry) {
    Optional<Form.Part> part =
        item.form() instanceof Form.Parts parts
            ? parts.parts().stream()
                .filter(p -> carry.piece().part().equals(Optional.of(p.id())))
                .findFirst()
            : Optional.empty();
    if (item.form() instanceof Form.Parts && part.isEmpty()) {
      return Optional.empty();
    }
    Optional<String> contains =
        item.form() instanceof Form.Whole whole
            ? whole.contains().map(c -> c.kind())
            : Optional.empty();
    return Optional.of(
        new Carried(
            carry.piece().text(),
            part.map(p -> item.name() + ": " + p.name()).orElse(item.name()),
            item.form().match(new Mass(part, carry.units())),
            item.form().match(new From(part)),
            Optional.of(item.form().match(new Where(part))),
            false,
            true,
            purpose(item.purpose(), item.covers(), contains, item.goesInto()),
            item.covers(),
            item.sleeps().isPresent() && part.map(p -> heaviest(item, p)).orElse(true),
            Optional.empty()));
  }

  /** Of a shelter in parts the heaviest is what gets wet; pegs may lie anywhere. */
  private static boolean heaviest(SharedItem item, Form.Part part) {
    return item.form() instanceof Form.Parts parts
        && parts.parts().stream().allMatch(p -> p.mass().milligrams() <= part.mass().milligrams());
  }

  /** The stated purpose; else the first need it covers, what it contains, what it goes into. */
  private static String purpose(
      Optional<String> stated,
      List<String> covers,
      Optional<String> contains,
      Optional<String> goesInto) {
    return stated
        .or(() -> covers.stream().findFirst())
        .or(() -> contains)
        .or(() -> goesInto)
        .orElse(OTHER);
  }

  private record Mass(Optional<Form.Part> part, int units) implements Form.Cases<Long> {
    @Override
    public Long whole(Form.Whole form) {
      return form.mass().milligrams();
    }

    @Override
    public Long parts(Form.Parts form) {
      return part.orElseThrow().mass().milligrams();
    }

    @Override
    public Long counted(Form.Counted form) {
      return units * form.unitMass().milligrams();
    }
  }

  private record From(Optional<Form.Part> part) implements Form.Cases<MassFrom> {
    @Override
    public MassFrom whole(Form.Whole form) {
      return form.massFrom();
    }

    @Override
    public MassFrom parts(Form.Parts form) {
      return part.orElseThrow().massFrom();
    }

    @Override
    public MassFrom counted(Form.Counted form) {
      return form.massFrom();
    }
  }

  private record Where(Optional<Form.Part> part) implements Form.Cases<Stow> {
    @Override
    public Stow whole(Form.Whole form) {
      return form.stow();
    }

    @Override
    public Stow parts(Form.Parts form) {
      return part.orElseThrow().stow();
    }

    @Override
    public Stow counted(Form.Counted form) {
      return form.stow();
    }
  }
}
