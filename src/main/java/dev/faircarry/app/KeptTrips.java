package dev.faircarry.app;

import dev.faircarry.access.Link;
import dev.faircarry.access.Role;
import dev.faircarry.access.Sight;
import dev.faircarry.access.Token;
import dev.faircarry.access.TokenHash;
import dev.faircarry.split.Proof;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** What can be done with stored trips. */
public final class KeptTrips {
  /** How a line of history ends that names the split agreed on, before its id. */
  private static final String AGREED = "agreed on split ";

  private final Store store;
  private final InstantSource clock;
  private final SecureRandom random;

  public KeptTrips(Store store, InstantSource clock, SecureRandom random) {
    this.store = store;
    this.clock = clock;
    this.random = random;
  }

  /** The same within a transaction. */
  public KeptTrips in(Store transaction) {
    return new KeptTrips(transaction, clock, random);
  }

  public Store store() {
    return store;
  }

  /** Stores count milliseconds. */
  public Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MILLIS);
  }

  String freshId() {
    return Token.freshId(random);
  }

  /** A link and its token, which is not kept and cannot be shown again. */
  public record Issued(Link link, Token token) {}

  /** Keeps a new trip; empty when its key has as many as it may. The link is its leader's. */
  public Optional<Issued> create(Trip trip, String key) {
    if (store.trips().countOf(key) >= StoreLimits.TRIPS_PER_KEY) {
      return Optional.empty();
    }
    String id = Token.freshId(random);
    Author by = new Author(Role.LEADER, Optional.empty());
    store.trips().create(id, TripState.of(trip), by, now(), key);
    return Optional.of(issue(id, Role.LEADER, Optional.empty(), Optional.empty()));
  }

  /** Makes a link. */
  public Issued issue(String trip, Role role, Optional<String> hiker, Optional<Duration> lasts) {
    return issue(trip, role, hiker, false, lasts);
  }

  /** Makes a link for the hiker who asks, which the leader has not seen. */
  public Issued issueOwn(Visit visit, Optional<Duration> lasts) {
    return issue(visit.stored().id(), Role.HIKER, visit.link().hiker(), true, lasts);
  }

  private Issued issue(
      String trip, Role role, Optional<String> hiker, boolean own, Optional<Duration> lasts) {
    Token token = Token.fresh(random);
    Instant now = now();
    Optional<Instant> expires = lasts.map(now::plus);
    Link link = new Link(token.linkId(), trip, role, hiker, own, now, expires, Optional.empty());
    store.links().add(link, token.hash());
    return new Issued(link, token);
  }

  /**
   * Lets the bearer of a token in. Empty, always the same, when the token is none, is unknown, is
   * another trip's, has ended, or the trip is gone. A deleted trip opens to its leader only.
   */
  public Optional<Visit> enter(String trip, Optional<String> bearer) {
    Optional<Token> token = bearer.flatMap(Token::read);
    Optional<LinkStore.Kept> kept = token.flatMap(t -> store.links().find(t.linkId()));
    TokenHash expected = kept.map(LinkStore.Kept::hash).orElse(TokenHash.NONE);
    boolean right = token.map(Token::hash).orElse(TokenHash.NONE).sameAs(expected);
    return kept.map(LinkStore.Kept::link)
        .filter(link -> right && link.trip().equals(trip) && link.holds(now()))
        .flatMap(link -> store.trips().find(trip).flatMap(found -> visit(link, found)));
  }

  private static Optional<Visit> visit(Link link, StoredTrip found) {
    Trip trip = found.state().trip();
    boolean gone = found.deleted() && link.role() != Role.LEADER;
    boolean stranger = link.hiker().filter(h -> !has(trip, h)).isPresent();
    if (gone || stranger) {
      return Optional.empty();
    }
    Sight sight = Sight.of(link, trip, found.state().keptPrivate());
    return Optional.of(new Visit(link, found, sight));
  }

  private static boolean has(Trip trip, String hiker) {
    return trip.hikers().stream().anyMatch(h -> h.id().equals(hiker));
  }

  /** What a visitor may see of any revision: what is private now was never open. */
  public static Sight sightOf(Visit visit, StoredTrip then) {
    Set<String> keptPrivate = new HashSet<>(visit.stored().state().keptPrivate());
    keptPrivate.addAll(then.state().keptPrivate());
    return Sight.of(visit.link(), then.state().trip(), keptPrivate);
  }

  /**
   * Keeps another document of the trip.
   *
   * @param expected the revision the change was made from
   */
  public ChangeResult change(Visit visit, int expected, Trip next, String what) {
    // Hikers who are taken out stay private: earlier revisions still hold their body mass.
    TripState old = visit.stored().state();
    return keep(visit, expected, new TripState(next, old.keptPrivate(), old.agreedSplit()), what);
  }

  /** Chooses the split that the group agreed on, or takes the choice back. */
  public ChangeResult agree(Visit visit, int expected, Optional<String> split) {
    TripState old = visit.stored().state();
    String what = split.map(id -> AGREED + id).orElse("no split agreed on");
    return keep(visit, expected, new TripState(old.trip(), old.keptPrivate(), split), what);
  }

  /**
   * The split that was agreed on before another one, as far as the newest part of history tells: it
   * says where things are while the group packs.
   */
  public Optional<StoredSplit> agreedBefore(StoredSplit split) {
    return store.trips().history(split.trip(), Integer.MAX_VALUE, StoreLimits.PAGE).stream()
        .map(RevisionLine::what)
        .filter(what -> what.contains(AGREED))
        .map(what -> what.substring(what.indexOf(AGREED) + AGREED.length()))
        .filter(id -> !id.equals(split.id()))
        .flatMap(id -> store.trips().split(split.trip(), id).stream())
        .filter(earlier -> !earlier.at().isAfter(split.at()))
        .findFirst();
  }

  /**
   * Keeps a hiker's body mass private even from the leader, or no longer. Other links of the
   * hiker's own making end: somebody else may have made them with a link the leader gave.
   */
  public ChangeResult keepPrivate(Visit visit, int expected, String hiker, boolean on) {
    return store.atomically(
        together -> {
          ChangeResult result = in(together).markPrivate(visit, expected, hiker, on);
          if (result instanceof ChangeResult.Kept) {
            for (Link link : together.links().of(visit.stored().id())) {
              if (link.own() && link.isOf(hiker) && !link.id().equals(visit.link().id())) {
                together.links().revoke(link.trip(), link.id(), now());
              }
            }
          }
          return result;
        });
  }

  private ChangeResult markPrivate(Visit visit, int expected, String hiker, boolean on) {
    TripState old = visit.stored().state();
    Set<String> keptPrivate = new HashSet<>(old.keptPrivate());
    if (on) {
      keptPrivate.add(hiker);
    } else {
      keptPrivate.remove(hiker);
    }
    String what = "body mass of " + hiker + (on ? " private" : " open to the leader");
    return keep(visit, expected, new TripState(old.trip(), keptPrivate, old.agreedSplit()), what);
  }

  /**
   * Brings an earlier revision back as a new one. What is private now stays so, whatever it was
   * then. A split agreed on since is no longer agreed on. The document counts as a new one even if
   * it is the same: otherwise what is stale would tell whether two hidden body masses are equal.
   */
  public ChangeResult undo(Visit visit, int expected, StoredTrip then) {
    Set<String> keptPrivate = new HashSet<>(visit.stored().state().keptPrivate());
    keptPrivate.addAll(then.state().keptPrivate());
    Optional<String> agreed =
        then.state()
            .agreedSplit()
            .filter(id -> store.trips().split(visit.stored().id(), id).isPresent());
    TripState next = new TripState(then.state().trip(), keptPrivate, agreed);
    String what = "back to revision " + then.line().number();
    return store
        .trips()
        .change(visit.stored().id(), new Change(expected, next, visit.author(), now(), what));
  }

  private ChangeResult keep(Visit visit, int expected, TripState next, String what) {
    StoredTrip old = visit.stored();
    boolean same = old.state().trip().equals(next.trip());
    int document = same ? old.document() : expected + 1;
    return store
        .trips()
        .change(old.id(), new Change(expected, next, visit.author(), now(), what, document));
  }

  /** Marks a trip as deleted; the time it is erased follows from the limits. */
  public ChangeResult delete(Visit visit, int expected) {
    Instant eraseAt = now().plus(StoreLimits.ERASE_AFTER);
    return store.trips().delete(visit.stored().id(), expected, eraseAt);
  }

  /** Erases a trip at once, with everything that belongs to it. */
  public ChangeResult erase(Visit visit, int expected) {
    StoredTrip trip = visit.stored();
    if (trip.head() != expected) {
      return new ChangeResult.Stale(trip.head());
    }
    return store.trips().erase(trip.id())
        ? new ChangeResult.Kept(expected)
        : new ChangeResult.Missing();
  }

  /**
   * Takes a hiker out and erases what history knows of them, in one go. No split is agreed on
   * afterwards, for it may have named them.
   */
  public ChangeResult eraseHiker(Visit visit, int expected, String hiker) {
    Trip without = WithoutHiker.of(visit.stored().state().trip(), hiker);
    return store.atomically(
        together -> {
          TripState old = visit.stored().state();
          Set<String> keptPrivate = new HashSet<>(old.keptPrivate());
          keptPrivate.remove(hiker);
          ChangeResult result =
              in(together)
                  .keep(
                      visit,
                      expected,
                      new TripState(without, keptPrivate, Optional.empty()),
                      "a hiker erased");
          if (result instanceof ChangeResult.Kept) {
            together.trips().eraseHiker(visit.stored().id(), hiker);
          }
          return result;
        });
  }

  /**
   * What came of taking over a change of plans.
   *
   * @param split id of the split that is agreed on now
   */
  public record TakenOver(ChangeResult result, String split) {}

  /** Keeps the trip after a change of plans, its split, and that the split is agreed on. */
  public TakenOver takeOver(Visit visit, int expected, Trip next, Split split, Proof proof) {
    String id = freshId();
    return store.atomically(
        together -> {
          TripState old = visit.stored().state();
          TripState state = new TripState(next, old.keptPrivate(), Optional.of(id));
          String what = "rebalanced, " + AGREED + id;
          ChangeResult result = in(together).keep(visit, expected, state, what);
          if (result instanceof ChangeResult.Kept) {
            StoredTrip kept = together.trips().find(visit.stored().id()).orElseThrow();
            Author by = visit.author();
            Optional<Proof> proved = Optional.of(proof);
            together
                .trips()
                .addSplit(
                    new StoredSplit(id, kept.id(), kept.document(), now(), by, split, proved));
          }
          return new TakenOver(result, id);
        });
  }

  /** Keeps a split somebody made; its id. */
  public String addSplit(Visit visit, Split split, Optional<Proof> proof) {
    String id = Token.freshId(random);
    StoredTrip trip = visit.stored();
    store
        .trips()
        .addSplit(
            new StoredSplit(id, trip.id(), trip.document(), now(), visit.author(), split, proof));
    return id;
  }

  /** Puts a solve of the newest document into the queue; empty when the queue is full. */
  public Optional<Job> ask(Visit visit, long effortSteps) {
    Job job =
        new Job(
            Token.freshId(random),
            visit.stored().id(),
            visit.stored().document(),
            effortSteps,
            visit.author(),
            now(),
            Job.State.WAITING,
            0,
            false,
            Optional.empty(),
            Optional.empty());
    return store.jobs().enqueue(job, StoreLimits.OPEN_JOBS) ? Optional.of(job) : Optional.empty();
  }
}
