package dev.faircarry.solve;

import dev.faircarry.split.Carry;
import dev.faircarry.split.Demand;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Policy;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Trip;
import dev.faircarry.unit.Fraction;
import dev.faircarry.unit.Mass;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Turns a trip without issues into a {@link Model}, keeping only the demands asked for. */
final class ModelBuilder {
  final Trip trip;
  final Predicate<Demand> active;
  final int hikers;
  final int days;
  final int[] lastDay;
  int[] stageStart = {};
  int[] stageEnd = {};
  int[] stageOfDay = {};
  final long[][] ownCounted;
  final long[][] ownLoad;
  final long[] targetNanograms;
  final long[] capNanograms;
  final long[] capMilligrams;
  final long[] room;
  final int[] maxPieces;
  final Map<String, Integer> kinds = new LinkedHashMap<>();
  long[][] ownInnerVolume = {};
  int[][] ownInnerCount = {};
  int apartRules;
  List<Block> blocks = List.of();
  final List<Model.Need> needs = new ArrayList<>();
  final int[] partsOfItem;
  final int[] partyOf;
  final List<String> partyNames = new ArrayList<>();
  boolean contradictory;

  /** Hikers, one for each frozen piece or unit, by reference. */
  final Map<PieceRef, Deque<Integer>> frozen = new HashMap<>();

  /**
   * Whether equal things of different items are told apart, as they are when it matters who had
   * which.
   */
  boolean tellApart;

  /** A piece to be left at home. */
  Optional<PieceRef> leftOut = Optional.empty();

  private ModelBuilder(Trip trip, Predicate<Demand> active) {
    this.trip = trip;
    this.active = active;
    hikers = trip.hikers().size();
    days = trip.days();
    lastDay = new int[hikers];
    ownCounted = new long[hikers][days];
    ownLoad = new long[hikers][days];
    targetNanograms = new long[hikers];
    capNanograms = new long[hikers];
    capMilligrams = new long[hikers];
    room = new long[hikers];
    maxPieces = new int[hikers];
    partsOfItem = new int[trip.shared().size()];
    partyOf = new int[hikers];
  }

  /** Whether a rule is among the demands asked for. */
  boolean asks(Rule rule) {
    return active.test(new Demand.OfRule(rule.id()));
  }

  /** The model under every demand of the trip. */
  static Model of(Trip trip) {
    return of(trip, demand -> true);
  }

  /** The model under the demands for which {@code active} is true. */
  static Model of(Trip trip, Predicate<Demand> active) {
    return new ModelBuilder(trip, active).model();
  }

  /**
   * The model for rebalancing: equal things of different items told apart, frozen pieces where they
   * were.
   */
  static Model of(Trip trip, Predicate<Demand> active, Split earlier, Set<PieceRef> frozen) {
    ModelBuilder builder = new ModelBuilder(trip, active);
    builder.tellApart = true;
    for (Carry carry : earlier.carries()) {
      for (int i = 0; i < builder.hikers; i++) {
        if (frozenBy(frozen, active, carry.piece())
            && trip.hikers().get(i).id().equals(carry.hiker())) {
          Deque<Integer> holders =
              builder.frozen.computeIfAbsent(carry.piece(), p -> new ArrayDeque<>());
          for (int u = 0; u < carry.units(); u++) {
            holders.add(i);
          }
        }
      }
    }
    return builder.model();
  }

  /** Whether the piece or the item it is of is frozen, and that is asked for. */
  private static boolean frozenBy(Set<PieceRef> frozen, Predicate<Demand> active, PieceRef piece) {
    return Stream.of(piece, PieceRef.item(piece.item()))
        .anyMatch(name -> frozen.contains(name) && active.test(new Demand.OfFrozen(name)));
  }

  /** The model of the trip with one piece, or all units of a counted item, left at home. */
  static Model without(Trip trip, PieceRef piece) {
    ModelBuilder builder = new ModelBuilder(trip, demand -> true);
    builder.leftOut = Optional.of(piece);
    return builder.model();
  }

  private Model model() {
    readStages();
    readKinds();
    for (int i = 0; i < hikers; i++) {
      readHiker(i);
    }
    new BlockBuilder(this).build();
    new NeedBuilder(this).build();
    return new Model(this);
  }

  private void readStages() {
    TreeSet<Integer> lasts = new TreeSet<>();
    for (int i = 0; i < hikers; i++) {
      lastDay[i] = trip.hikers().get(i).lastDay(days) - 1;
      lasts.add(lastDay[i]);
    }
    lasts.add(days - 1);
    stageEnd = lasts.stream().mapToInt(Integer::intValue).toArray();
    stageStart = new int[stageEnd.length];
    stageOfDay = new int[days];
    for (int s = 0; s < stageEnd.length; s++) {
      stageStart[s] = s == 0 ? 0 : stageEnd[s - 1] + 1;
      Arrays.fill(stageOfDay, stageStart[s], stageEnd[s] + 1, s);
    }
  }

  private void readKinds() {
    for (var item : trip.shared()) {
      item.goesInto()
          .filter(kind -> active.test(new Demand.OfContainers(kind)))
          .ifPresent(kind -> kinds.putIfAbsent(kind, kinds.size()));
    }
    ownInnerVolume = new long[hikers][kinds.size()];
    ownInnerCount = new int[hikers][kinds.size()];
  }

  /**
   * Index of a kind of container some piece needs; -1 for others and while containers are not asked
   * for.
   */
  int kind(String name) {
    return kinds.getOrDefault(name, -1);
  }

  private void readHiker(int i) {
    Hiker hiker = trip.hikers().get(i);
    Policy policy = trip.policy();
    Fraction target =
        hiker
            .targetFraction()
            .orElse(
                hiker.minor()
                    ? lower(policy.targetFraction(), Policy.MINOR_TARGET_FRACTION)
                    : policy.targetFraction());
    targetNanograms[i] =
        hiker
            .targetLoad()
            .map(mass -> Math.multiplyExact(mass.milligrams(), 1_000_000L))
            .or(() -> hiker.bodyMass().map(target::ofMassInNanograms))
            .orElseThrow(
                () -> new IllegalArgumentException("a hiker has a body mass or a target load"));
    Fraction cap =
        hiker
            .capFraction()
            .orElse(
                hiker.minor()
                    ? lower(policy.capFraction(), Policy.MINOR_CAP_FRACTION)
                    : policy.capFraction());
    long capAt = Model.UNLIMITED;
    if (hiker.bodyMass().isPresent()) {
      capAt = Math.min(capAt, cap.ofMassInNanograms(hiker.bodyMass().get()));
    }
    if (hiker.capLoad().isPresent()) {
      capAt = Math.min(capAt, hiker.capLoad().get().milligrams() * 1_000_000L);
    }
    if (hiker.pack().flatMap(p -> p.loadRating()).isPresent()) {
      Mass rating = hiker.pack().flatMap(p -> p.loadRating()).get();
      capAt = Math.min(capAt, rating.milligrams() * 1_000_000L);
    }
    capNanograms[i] = capAt;
    capMilligrams[i] = capAt == Model.UNLIMITED ? Model.UNLIMITED : capAt / 1_000_000L;
    maxPieces[i] =
        active.test(new Demand.OfMaxPieces(hiker.id()))
            ? hiker.maxPieces().orElse(Integer.MAX_VALUE)
            : Integer.MAX_VALUE;
    partyOf[i] = partyIndex(hiker.party().orElse(""));
    readKit(i, hiker, policy.basis() == Policy.Basis.LOAD);
  }

  private static Fraction lower(Fraction a, Fraction b) {
    return a.millionths() <= b.millionths() ? a : b;
  }

  /** Index of a party by name; the empty name stands for those without one. */
  int partyIndex(String name) {
    int known = partyNames.indexOf(name);
    if (known >= 0) {
      return known;
    }
    partyNames.add(name);
    return partyNames.size() - 1;
  }

  private void readKit(int i, Hiker hiker, boolean countsOwn) {
    long packed = 0;
    for (int d = 0; d <= lastDay[i]; d++) {
      ownLoad[i][d] = hiker.pack().map(p -> p.mass().milligrams()).orElse(0L);
      ownCounted[i][d] = countsOwn ? ownLoad[i][d] : 0;
    }
    for (KitItem item : hiker.kit()) {
      item.contains()
          .filter(c -> kind(c.kind()) >= 0)
          .ifPresent(
              c -> {
                ownInnerVolume[i][kind(c.kind())] += c.volume().milliliters();
                ownInnerCount[i][kind(c.kind())]++;
              });
      if (item.worn()) {
        continue;
      }
      if (item.stow() != Stow.OUTSIDE) {
        packed += item.volume().map(v -> v.milliliters()).orElse(0L);
      }
      for (int d = 0; d <= lastDay[i]; d++) {
        long mass = item.mass().milligrams();
        if (item.use().isPresent()) {
          mass = usedEvenly(mass, item.use().get().leaves().milligrams(), d, lastDay[i] + 1);
        }
        ownLoad[i][d] += mass;
        ownCounted[i][d] += countsOwn && !item.luxury() ? mass : 0;
      }
    }
    boolean roomAsked = active.test(new Demand.OfRoom(hiker.id()));
    long packedVolume = packed;
    room[i] =
        hiker
            .pack()
            .filter(p -> roomAsked)
            .flatMap(p -> p.volume())
            .map(v -> Math.max(0, v.milliliters() - packedVolume))
            .orElse(Model.UNLIMITED);
  }

  /** mass - floor((mass - leaves) x d / span), d counted from 0. */
  static long usedEvenly(long mass, long leaves, int day, int span) {
    return mass - (mass - leaves) * day / span;
  }
}
