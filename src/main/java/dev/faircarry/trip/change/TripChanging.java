package dev.faircarry.trip.change;

import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.Pack;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.unit.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * Applies changes to a trip, one after the other. What names a hiker or piece that is gone is taken
 * care of and told; a change that cannot be made is a fault, and then none is made.
 */
public final class TripChanging implements Change.Cases<Boolean> {
  private final Trip before;
  private final List<Hiker> hikers;
  private final List<SharedItem> shared;
  private RuleChanging rules;
  private int days;
  private final List<ChangeNote> notes = new ArrayList<>();
  private final List<ChangeFault> faults = new ArrayList<>();
  private int at;

  private TripChanging(Trip trip) {
    before = trip;
    hikers = new ArrayList<>(trip.hikers());
    shared = new ArrayList<>(trip.shared());
    rules = new RuleChanging(trip.rules(), this::note);
    days = trip.days();
  }

  /** The trip after all changes, in their order. */
  public static Changed apply(Trip trip, List<Change> changes) {
    TripChanging changing = new TripChanging(trip);
    for (Change change : changes) {
      change.match(changing);
      changing.at++;
    }
    if (!changing.faults.isEmpty()) {
      return new Changed.Refused(changing.faults);
    }
    changing.at = Math.max(0, changes.size() - 1);
    return new Changed.Made(changing.trip(), changing.notes);
  }

  private Trip trip() {
    Trip changed =
        new Trip(
            before.name(), days, before.policy(), hikers, shared, rules.rules(), before.plan());
    return PlanPruning.prune(changed, this::note);
  }

  private void note(ChangeNote.Kind kind, String message) {
    notes.add(new ChangeNote(at, kind, message));
  }

  private boolean fault(ChangeFault.Kind kind, String field, String value) {
    faults.add(new ChangeFault(at, field, value, kind));
    return false;
  }

  private int hikerAt(String id) {
    return indexOf(hikers, Hiker::id, id, "hiker", ChangeFault.Kind.UNKNOWN_HIKER);
  }

  private int itemAt(String id, String field) {
    return indexOf(shared, SharedItem::id, id, field, ChangeFault.Kind.UNKNOWN_PIECE);
  }

  private <T> int indexOf(
      List<T> list, Function<T, String> id, String wanted, String field, ChangeFault.Kind kind) {
    for (int i = 0; i < list.size(); i++) {
      if (id.apply(list.get(i)).equals(wanted)) {
        return i;
      }
    }
    fault(kind, field, wanted);
    return -1;
  }

  private boolean change(String hiker, UnaryOperator<Hiker> how) {
    int i = hikerAt(hiker);
    if (i >= 0) {
      hikers.set(i, how.apply(hikers.get(i)));
    }
    return i >= 0;
  }

  @Override
  public Boolean dropsOut(Change.DropsOut change) {
    int i = hikerAt(change.hiker());
    if (i < 0) {
      return false;
    }
    Hiker gone = hikers.remove(i);
    for (KitItem item : gone.kit()) {
      if (!item.covers().isEmpty()) {
        note(
            ChangeNote.Kind.NEED_GOES_WITH_HIKER,
            Told.name(item.name())
                + " ("
                + String.join(", ", item.covers())
                + ") stays at home with "
                + gone.name()
                + ".");
      }
    }
    for (int s = 0; s < shared.size(); s++) {
      SharedItem item = shared.get(s);
      if (item.owner().equals(Optional.of(gone.id()))) {
        shared.set(s, Copies.ownedBy(item, Optional.empty()));
        note(
            ChangeNote.Kind.OWNER_GONE,
            Told.name(item.name())
                + " belongs to "
                + gone.name()
                + ", who does not come. It is taken all the same; if it stays at home, say so.");
      }
    }
    rules.hikerGone(gone);
    gone.party()
        .filter(party -> hikers.stream().noneMatch(h -> h.party().equals(Optional.of(party))))
        .ifPresent(rules::partyGone);
    return true;
  }

  @Override
  public Boolean joins(Change.Joins change) {
    if (hikers.stream().anyMatch(h -> h.id().equals(change.hiker().id()))) {
      return fault(ChangeFault.Kind.DUPLICATE_ID, "hiker/id", change.hiker().id());
    }
    return hikers.add(change.hiker());
  }

  @Override
  public Boolean canCarry(Change.CanCarry change) {
    return change(change.hiker(), h -> Copies.canCarry(h, change));
  }

  @Override
  public Boolean leavesAfter(Change.LeavesAfter change) {
    if (change.day() < 1 || change.day() > days) {
      return fault(ChangeFault.Kind.NO_SUCH_DAY, "day", String.valueOf(change.day()));
    }
    OptionalInt last = change.day() == days ? OptionalInt.empty() : OptionalInt.of(change.day());
    return change(change.hiker(), h -> Copies.leaving(h, last));
  }

  @Override
  public Boolean itemAdded(Change.ItemAdded change) {
    if (shared.stream().anyMatch(s -> s.id().equals(change.item().id()))) {
      return fault(ChangeFault.Kind.DUPLICATE_ID, "item/id", change.item().id());
    }
    return shared.add(change.item());
  }

  @Override
  public Boolean itemGone(Change.ItemGone change) {
    int i = itemAt(change.piece().item(), "piece");
    if (i < 0) {
      return false;
    }
    Losing.Left left = shared.get(i).form().match(new Losing(change));
    if (left.fault().isPresent()) {
      String field = change.units().isPresent() ? "units" : "piece";
      String value =
          change.units().isPresent()
              ? String.valueOf(change.units().getAsInt())
              : change.piece().text();
      return fault(left.fault().get(), field, value);
    }
    if (left.form().isPresent()) {
      shared.set(i, Copies.inForm(shared.get(i), left.form().get()));
      if (change.piece().part().isPresent()) {
        rules.pieceGone(change.piece());
      }
    } else {
      SharedItem gone = shared.remove(i);
      rules.pieceGone(PieceRef.item(gone.id()));
    }
    return true;
  }

  @Override
  public Boolean itemReplaced(Change.ItemReplaced change) {
    int i = itemAt(change.item(), "item");
    if (i < 0) {
      return false;
    }
    String id = change.by().id();
    if (!id.equals(change.item()) && shared.stream().anyMatch(s -> s.id().equals(id))) {
      return fault(ChangeFault.Kind.DUPLICATE_ID, "by/id", id);
    }
    shared.set(i, change.by());
    rules.itemReplaced(change.item(), change.by());
    return true;
  }

  @Override
  public Boolean itemWeighs(Change.ItemWeighs change) {
    int i = itemAt(change.piece().item(), "piece");
    if (i < 0) {
      return false;
    }
    Weighing.Left weighed = shared.get(i).form().match(new Weighing(change));
    if (weighed.fault().isPresent()) {
      return fault(weighed.fault().get(), "piece", change.piece().text());
    }
    weighed.form().ifPresent(form -> shared.set(i, Copies.inForm(shared.get(i), form)));
    return true;
  }

  @Override
  public Boolean kitAdded(Change.KitAdded change) {
    int i = hikerAt(change.hiker());
    if (i < 0) {
      return false;
    }
    List<KitItem> kit = new ArrayList<>(hikers.get(i).kit());
    if (kit.stream().anyMatch(k -> k.id().equals(change.item().id()))) {
      return fault(ChangeFault.Kind.DUPLICATE_ID, "item/id", change.item().id());
    }
    kit.add(change.item());
    hikers.set(i, Copies.withKit(hikers.get(i), kit));
    return true;
  }

  @Override
  public Boolean kitGone(Change.KitGone change) {
    return kit(change.hiker(), change.item(), item -> Optional.empty());
  }

  @Override
  public Boolean kitWeighs(Change.KitWeighs change) {
    return kit(
        change.hiker(),
        change.item(),
        item -> Optional.of(Copies.weighing(item, change.mass(), change.massFrom())));
  }

  private boolean kit(String hiker, String item, Function<KitItem, Optional<KitItem>> how) {
    int i = hikerAt(hiker);
    if (i < 0) {
      return false;
    }
    List<KitItem> kit = new ArrayList<>(hikers.get(i).kit());
    int k = indexOf(kit, KitItem::id, item, "item", ChangeFault.Kind.UNKNOWN_THING);
    if (k < 0) {
      return false;
    }
    Optional<KitItem> now = how.apply(kit.remove(k));
    now.ifPresent(changed -> kit.add(k, changed));
    hikers.set(i, Copies.withKit(hikers.get(i), kit));
    return true;
  }

  /** A pack nothing was said of before becomes one of this mass. */
  @Override
  public Boolean packWeighs(Change.PackWeighs change) {
    return change(
        change.hiker(),
        h -> {
          Pack pack =
              h.pack()
                  .map(
                      p ->
                          new Pack(
                              change.mass(),
                              change.massFrom(),
                              p.volume(),
                              p.loadRating(),
                              p.cost(),
                              label(p)))
                  .orElseGet(
                      () ->
                          new Pack(
                              change.mass(),
                              change.massFrom(),
                              Optional.empty(),
                              Optional.empty(),
                              Optional.empty()));
          return Copies.withPack(h, pack);
        });
  }

  private static Optional<Mass> label(Pack pack) {
    return pack.massFrom() == MassFrom.LABEL ? Optional.of(pack.mass()) : pack.labelMass();
  }

  @Override
  public Boolean ruleAdded(Change.RuleAdded change) {
    String id = change.rule().id();
    if (rules.rules().stream().map(Rule::id).anyMatch(id::equals)) {
      return fault(ChangeFault.Kind.DUPLICATE_ID, "rule/id", id);
    }
    return rules.add(change.rule());
  }

  @Override
  public Boolean ruleRemoved(Change.RuleRemoved change) {
    return rules.remove(change.rule())
        || fault(ChangeFault.Kind.UNKNOWN_RULE, "rule", change.rule());
  }

  @Override
  public Boolean daysAdded(Change.DaysAdded change) {
    if (change.days() < 1 || days + (long) change.days() > Limits.DAYS) {
      return fault(ChangeFault.Kind.OUT_OF_RANGE, "days", String.valueOf(change.days()));
    }
    for (int s = 0; s < shared.size(); s++) {
      SharedItem item = shared.get(s);
      Optional<SharedItem> longer = Copies.usedLonger(item, change.days());
      if (longer.isPresent()) {
        shared.set(s, longer.get());
        note(
            ChangeNote.Kind.USE_CONTINUED,
            Told.name(item.name()) + " is used on the added days as on the last day so far.");
      }
    }
    for (int i = 0; i < hikers.size(); i++) {
      if (hikers.get(i).leavesAfterDay().equals(OptionalInt.of(days))) {
        hikers.set(i, Copies.leaving(hikers.get(i), OptionalInt.empty()));
        note(
            ChangeNote.Kind.STAYS_TO_THE_END,
            hikers.get(i).name() + " was to stay to the end and stays to the new end.");
      }
    }
    days += change.days();
    return true;
  }
}
