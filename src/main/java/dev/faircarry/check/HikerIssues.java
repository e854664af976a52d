package dev.faircarry.check;

import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.Pack;

/** What is wrong with one hiker as stated. */
final class HikerIssues {
  private HikerIssues() {}

  static void find(Hiker hiker, Pointer at, int tripDays, Ranges ranges) {
    ranges.named(at, hiker.id(), hiker.name());
    hiker.party().ifPresent(party -> ranges.word(at.at("party"), party));
    target(hiker, at, ranges);
    if (hiker.maxPieces().isPresent()) {
      ranges.number(at.at("maxPieces"), hiker.maxPieces().getAsInt(), 0, Limits.PIECES);
    }
    if (hiker.leavesAfterDay().isPresent()) {
      day(at.at("leavesAfterDay"), hiker.leavesAfterDay().getAsInt(), tripDays, ranges.issues());
    }
    hiker.pack().ifPresent(pack -> pack(pack, at.at("pack"), ranges));
    kit(hiker, at.at("kit"), ranges);
  }

  private static void target(Hiker hiker, Pointer at, Ranges ranges) {
    if (hiker.bodyMass().isEmpty() && hiker.targetLoad().isEmpty()) {
      ranges
          .issues()
          .add(IssueCode.NO_TARGET, at, "", "The hiker has neither a body mass nor a target load.");
    }
    hiker
        .bodyMass()
        .ifPresent(
            mass ->
                ranges.privateMass(
                    at.at("bodyMass"),
                    mass,
                    Limits.MIN_BODY_MASS_MILLIGRAMS,
                    Limits.MAX_BODY_MASS_MILLIGRAMS));
    hiker
        .targetLoad()
        .ifPresent(
            mass ->
                ranges.privateMass(
                    at.at("targetLoad"),
                    mass,
                    Limits.MIN_TARGET_LOAD_MILLIGRAMS,
                    Limits.MAX_TARGET_LOAD_MILLIGRAMS));
    hiker.targetFraction().ifPresent(f -> ranges.fraction(at.at("targetFraction"), f));
    hiker.capFraction().ifPresent(f -> ranges.fraction(at.at("capFraction"), f));
    hiker.capLoad().ifPresent(mass -> ranges.itemMass(at.at("capLoad"), mass));
  }

  static void day(Pointer at, int day, int tripDays, Issues issues) {
    if (day < 1 || day > tripDays) {
      issues.add(
          IssueCode.NO_SUCH_DAY,
          at,
          String.valueOf(day),
          "The trip has no day " + day + "; its days run from 1 to " + tripDays + ".");
    }
  }

  private static void pack(Pack pack, Pointer at, Ranges ranges) {
    ranges.itemMass(at.at("mass"), pack.mass());
    ranges.volume(at.at("volume"), pack.volume());
    pack.loadRating().ifPresent(rating -> ranges.itemMass(at.at("loadRating"), rating));
    pack.labelMass().ifPresent(mass -> ranges.itemMass(at.at("labelMass"), mass));
  }

  private static void kit(Hiker hiker, Pointer at, Ranges ranges) {
    if (!ranges.size(at, hiker.kit(), Limits.KIT_ITEMS_PER_HIKER)) {
      return;
    }
    ranges.uniqueIds(at, TripIssues.ids(hiker.kit(), KitItem::id), "kit item");
    for (int i = 0; i < hiker.kit().size(); i++) {
      kitItem(hiker.kit().get(i), at.at(i), ranges);
    }
  }

  private static void kitItem(KitItem item, Pointer at, Ranges ranges) {
    ranges.named(at, item.id(), item.name());
    ranges.itemMass(at.at("mass"), item.mass());
    ranges.volume(at.at("volume"), item.volume());
    ranges.covers(at.at("covers"), item.covers());
    item.use().ifPresent(use -> ranges.evenly(at.at("use"), use, item.mass()));
    ranges.contains(at.at("contains"), item.contains());
    item.purpose().ifPresent(purpose -> ranges.word(at.at("purpose"), purpose));
    item.labelMass().ifPresent(mass -> ranges.itemMass(at.at("labelMass"), mass));
  }
}
