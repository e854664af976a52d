package dev.faircarry.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.access.Link;
import dev.faircarry.access.Role;
import dev.faircarry.access.Token;
import dev.faircarry.app.Author;
import dev.faircarry.app.Change;
import dev.faircarry.app.ChangeResult;
import dev.faircarry.app.ReplyStore;
import dev.faircarry.app.RevisionLine;
import dev.faircarry.app.Store;
import dev.faircarry.app.StoreTrouble;
import dev.faircarry.app.StoredReading;
import dev.faircarry.app.StoredSplit;
import dev.faircarry.app.StoredTrip;
import dev.faircarry.app.TripState;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Proof;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Parse;
import dev.faircarry.weigh.ScaleReading;
import dev.faircarry.weigh.Weighed;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every store must do, tried on each real one. */
abstract class StoreContract {
  static final Seal SEAL = Seal.ofKeyset(Seal.newKeyset());
  static final Instant NOON = Instant.parse("2026-06-01T12:00:00Z");
  static final Author LEADER = new Author(Role.LEADER, Optional.empty());
  static final Author ASHA = new Author(Role.HIKER, Optional.of("asha"));
  private final SecureRandom random = new SecureRandom();
  Store store;

  /** Opens the same empty place each time within a test. */
  abstract Store open() throws Exception;

  @BeforeEach
  void begin() throws Exception {
    store = open();
  }

  @AfterEach
  void end() {
    store.close();
  }

  final String kept(String name) {
    String id = Token.freshId(random);
    store.trips().create(id, TripState.of(Trips.named(name)), LEADER, NOON, "key");
    return id;
  }

  private static Change to(int expected, String name) {
    return new Change(
        expected, TripState.of(Trips.named(name)), LEADER, NOON.plusSeconds(expected), "renamed");
  }

  @Test
  void tripComesBackAsItWasKept() throws Exception {
    String id = Token.freshId(random);
    TripState state = new TripState(Trips.named("One"), Set.of("asha", "tomas"), Optional.of("s1"));
    store.trips().create(id, state, ASHA, NOON, "key");
    store.close();
    store = open();
    StoredTrip found = store.trips().find(id).orElseThrow();
    assertEquals(state, found.state());
    assertEquals(new RevisionLine(1, NOON, ASHA, "created", false), found.line());
    assertEquals(1, found.head());
    assertFalse(found.deleted());
    assertEquals(Optional.empty(), store.trips().find("nothing"));
  }

  @Test
  void changeFromAnOldRevisionIsRefused() {
    String id = kept("One");
    assertEquals(new ChangeResult.Kept(2), store.trips().change(id, to(1, "Two")));
    assertEquals(new ChangeResult.Stale(2), store.trips().change(id, to(1, "Three")));
    assertEquals(new ChangeResult.Missing(), store.trips().change("nothing", to(1, "Three")));
    assertEquals("Two", store.trips().find(id).orElseThrow().state().trip().name());
  }

  @Test
  void everyRevisionCanBeReadAndHistoryIsPaged() {
    String id = kept("r1");
    for (int i = 1; i < 7; i++) {
      store.trips().change(id, to(i, "r" + (i + 1)));
    }
    for (int i = 1; i <= 7; i++) {
      assertEquals("r" + i, store.trips().find(id, i).orElseThrow().state().trip().name());
    }
    assertEquals(Optional.empty(), store.trips().find(id, 8));
    assertEquals(List.of(7, 6, 5), numbers(store.trips().history(id, Integer.MAX_VALUE, 3)));
    assertEquals(List.of(4, 3, 2), numbers(store.trips().history(id, 5, 3)));
    assertEquals(List.of(1), numbers(store.trips().history(id, 2, 3)));
  }

  /** What was read is kept in memory; what others do to it must show at once. */
  @Test
  void whatAnotherInstanceDoesIsSeenAtOnce() throws Exception {
    String id = kept("r1");
    Token token = link(id, Role.VIEWER, Optional.empty());
    try (Store other = open()) {
      for (int i = 1; i < 20; i++) {
        assertEquals("r" + i, store.trips().find(id).orElseThrow().state().trip().name());
        assertEquals("r" + i, other.trips().find(id).orElseThrow().state().trip().name());
        (i % 2 == 0 ? store : other).trips().change(id, to(i, "r" + (i + 1)));
      }
      assertTrue(store.links().find(token.linkId()).orElseThrow().link().holds(NOON));
      assertTrue(other.links().revoke(id, token.linkId(), NOON));
      assertFalse(store.links().find(token.linkId()).orElseThrow().link().holds(NOON));
      assertEquals(Optional.empty(), store.links().find("nobody"));
      assertTrue(other.trips().erase(id));
      assertEquals(Optional.empty(), store.trips().find(id));
      assertEquals(Optional.empty(), store.links().find(token.linkId()));
    }
  }

  private static List<Integer> numbers(List<RevisionLine> lines) {
    return lines.stream().map(RevisionLine::number).toList();
  }

  @Test
  void editorsAtOnceLoseNothing() throws Exception {
    String id = kept("start");
    int editors = 8;
    int each = 10;
    ExecutorService pool = Executors.newFixedThreadPool(editors);
    try {
      List<Callable<Set<Integer>>> work = new ArrayList<>();
      for (int editor = 0; editor < editors; editor++) {
        String name = "editor " + editor;
        work.add(() -> edit(id, name, each));
      }
      Set<Integer> all = new TreeSet<>();
      int kept = 0;
      for (Future<Set<Integer>> done : pool.invokeAll(work)) {
        kept += done.get().size();
        all.addAll(done.get());
      }
      assertEquals(editors * each, kept);
      assertEquals(editors * each, all.size(), "no revision number was given twice");
      assertEquals(editors * each + 1, store.trips().find(id).orElseThrow().head());
    } finally {
      pool.shutdownNow();
    }
  }

  private Set<Integer> edit(String id, String name, int times) {
    Set<Integer> kept = new TreeSet<>();
    int head = 1;
    while (kept.size() < times) {
      ChangeResult result = store.trips().change(id, to(head, name));
      if (result instanceof ChangeResult.Kept k) {
        kept.add(k.revision());
        head = k.revision();
      } else if (result instanceof ChangeResult.Stale stale) {
        head = stale.revision();
      }
    }
    return kept;
  }

  @Test
  void deletedTripWaitsToBeErasedAndCanComeBack() {
    String id = kept("One");
    Instant later = NOON.plus(Duration.ofDays(30));
    assertEquals(new ChangeResult.Stale(1), store.trips().delete(id, 7, later));
    assertEquals(new ChangeResult.Kept(1), store.trips().delete(id, 1, later));
    assertEquals(Optional.of(later), store.trips().find(id).orElseThrow().eraseAt());
    assertEquals(new ChangeResult.Missing(), store.trips().change(id, to(1, "Two")));
    assertTrue(store.trips().restore(id));
    assertFalse(store.trips().restore(id));
    store.trips().delete(id, 1, later);
    assertEquals(0, store.trips().eraseDue(later.minusMillis(1)));
    assertEquals(1, store.trips().eraseDue(later));
    assertEquals(Optional.empty(), store.trips().find(id));
  }

  @Test
  void erasingATripErasesAllOfIt() {
    String id = kept("One");
    Token token = link(id, Role.LEADER, Optional.empty());
    store.trips().addSplit(split(id, "s1", "asha", Optional.empty()));
    assertTrue(store.trips().erase(id));
    assertFalse(store.trips().erase(id));
    assertEquals(Optional.empty(), store.links().find(token.linkId()));
    assertEquals(Optional.empty(), store.trips().split(id, "s1"));
    assertEquals(List.of(), store.trips().history(id, 9, 9));
  }

  @Test
  void erasingAHikerErasesThemFromThePastToo() {
    String id = kept("One");
    Token hers = link(id, Role.HIKER, Optional.of("asha"));
    Token leaders = link(id, Role.LEADER, Optional.empty());
    store.trips().addSplit(split(id, "s1", "asha", Optional.empty()));
    store.trips().addSplit(split(id, "s2", "tomas", Optional.empty()));
    store
        .trips()
        .change(id, new Change(1, TripState.of(Trips.named("Two")), ASHA, NOON, "hikers/asha"));
    store
        .trips()
        .change(
            id, new Change(2, TripState.of(Trips.withoutAsha("Three")), LEADER, NOON, "without"));
    store.trips().eraseHiker(id, "asha");
    assertEquals(Optional.empty(), store.trips().find(id, 1));
    assertEquals(Optional.empty(), store.trips().find(id, 2));
    assertEquals("Three", store.trips().find(id).orElseThrow().state().trip().name());
    assertEquals(Optional.empty(), store.trips().split(id, "s1"));
    assertTrue(store.trips().split(id, "s2").isPresent());
    assertEquals(Optional.empty(), store.links().find(hers.linkId()));
    assertTrue(store.links().find(leaders.linkId()).isPresent());
    assertFalse(store.trips().history(id, 9, 9).toString().contains("asha"));
  }

  @Test
  void tripsAreCountedByWhoPays() {
    kept("One");
    kept("Two");
    assertEquals(2, store.trips().countOf("key"));
    assertEquals(0, store.trips().countOf("other"));
  }

  @Test
  void splitsComeBackNewestFirst() {
    String id = kept("One");
    Proof proof = new Proof(4, 2, 1, OptionalLong.of(88), true, 1000, false);
    StoredSplit first = split(id, "a", "asha", Optional.of(proof));
    StoredSplit second = split(id, "b", "tomas", Optional.empty());
    StoredSplit third = split(id, "c", "tomas", Optional.empty());
    List.of(first, second, third).forEach(store.trips()::addSplit);
    assertEquals(Optional.of(first), store.trips().split(id, "a"));
    assertEquals(List.of(third, second), store.trips().splits(id, Optional.empty(), 2));
    assertEquals(List.of(first), store.trips().splits(id, Optional.of("b"), 2));
  }

  static StoredSplit split(String trip, String id, String hiker, Optional<Proof> proof) {
    Split split =
        new Split(List.of(new Carry(hiker, PieceRef.of("stove"), 1)), List.of(), List.of());
    return new StoredSplit(id, trip, 1, NOON, LEADER, split, proof);
  }

  private static StoredReading reading(String trip, String id, Weighed weighed, String mass) {
    Mass read = ((Parse.Read<Mass>) Mass.parse(mass)).value();
    return new StoredReading(
        id,
        trip,
        id.equals("r1") ? Optional.of("s1") : Optional.empty(),
        NOON.plusMillis(7),
        ASHA,
        new ScaleReading(weighed, read, "07:40", "the grocer’s", id.equals("r2")));
  }

  @Test
  void readingsComeBackAsTheyWereKept() throws Exception {
    String id = kept("One");
    StoredReading first = reading(id, "r1", new Weighed.WholePack("asha"), "27 lb 3.5 oz");
    StoredReading second = reading(id, "r2", new Weighed.OfKit("tomas", "quilt"), "0.65 kg");
    StoredReading third = reading(id, "r3", new Weighed.Piece(PieceRef.of("shelter/fly")), "2 lb");
    StoredReading fourth = reading(id, "r4", new Weighed.EmptyPack("tomas"), "900 g");
    assertTrue(store.readings().add(id, List.of(first, second), 4));
    assertFalse(store.readings().add(id, List.of(third, fourth, third), 4), "one too many");
    assertTrue(store.readings().add(id, List.of(third, fourth), 4));
    assertFalse(store.readings().add("nothing", List.of(first), 4));
    store.close();
    store = open();
    assertEquals(List.of(first, second, third, fourth), store.readings().of(id));
    assertEquals(List.of(fourth, third), store.readings().page(id, Optional.empty(), 2));
    assertEquals(List.of(second, first), store.readings().page(id, Optional.of("r3"), 9));
    assertTrue(store.trips().erase(id));
    assertEquals(List.of(), store.readings().of(id));
  }

  @Test
  void readingsOfAnErasedHikerGo() {
    String id = kept("One");
    StoredReading hers = reading(id, "r1", new Weighed.WholePack("asha"), "12 kg");
    StoredReading shared = reading(id, "r2", new Weighed.Piece(PieceRef.of("stove")), "95 g");
    store.readings().add(id, List.of(hers, shared), 9);
    store
        .trips()
        .change(id, new Change(1, TripState.of(Trips.withoutAsha("Two")), LEADER, NOON, "without"));
    store.trips().eraseHiker(id, "asha");
    List<StoredReading> left = store.readings().of(id);
    assertEquals(List.of(shared.reading()), left.stream().map(StoredReading::reading).toList());
    assertFalse(left.toString().contains("asha"));
  }

  @Test
  void linkIsKeptAsAHashAndEndsOnce() {
    String id = kept("One");
    Token token = link(id, Role.HIKER, Optional.of("asha"));
    var kept = store.links().find(token.linkId()).orElseThrow();
    assertTrue(kept.hash().sameAs(token.hash()));
    assertEquals(List.of(kept.link()), store.links().of(id));
    assertFalse(store.links().revoke("other", token.linkId(), NOON));
    assertTrue(store.links().revoke(id, token.linkId(), NOON));
    assertFalse(store.links().revoke(id, token.linkId(), NOON.plusSeconds(1)));
    assertEquals(
        Optional.of(NOON), store.links().find(token.linkId()).orElseThrow().link().revoked());
  }

  private Token link(String trip, Role role, Optional<String> hiker) {
    Token token = Token.fresh(random);
    store
        .links()
        .add(
            new Link(
                token.linkId(),
                trip,
                role,
                hiker,
                role == Role.HIKER,
                NOON,
                Optional.of(NOON.plusSeconds(60)),
                Optional.empty()),
            token.hash());
    return token;
  }

  @Test
  void replyIsRememberedForItsTime() {
    byte[] body = "{}".getBytes(StandardCharsets.UTF_8);
    store.replies().remember("scope", "k", new ReplyStore.Reply("hash", 201, "/x", body), NOON);
    var found = store.replies().find("scope", "k", NOON).orElseThrow();
    assertEquals("hash", found.request());
    assertEquals(201, found.status());
    assertEquals("/x", found.location());
    assertEquals("{}", new String(found.body(), StandardCharsets.UTF_8));
    assertEquals(Optional.empty(), store.replies().find("scope", "k", NOON.plusMillis(1)));
    assertEquals(Optional.empty(), store.replies().find("else", "k", NOON));
    assertEquals(0, store.replies().forget(NOON));
    assertEquals(1, store.replies().forget(NOON.plusMillis(1)));
  }

  /** Ends work half done. */
  private static final class FaultOnPurpose extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }

  @Test
  void whatIsDoneTogetherIsKeptTogetherOrNotAtAll() {
    String id = kept("One");
    assertThrows(
        FaultOnPurpose.class,
        () ->
            store.atomically(
                together -> {
                  together.trips().change(id, to(1, "Two"));
                  together
                      .replies()
                      .remember("s", "k", new ReplyStore.Reply("h", 200, "", new byte[0]), NOON);
                  throw new FaultOnPurpose();
                }));
    assertEquals(1, store.trips().find(id).orElseThrow().head());
    assertEquals(Optional.empty(), store.replies().find("s", "k", NOON));
    int head =
        store.atomically(
            together -> {
              together.trips().change(id, to(1, "Two"));
              return together.trips().find(id).orElseThrow().head();
            });
    assertEquals(2, head);
    assertEquals(2, store.trips().find(id).orElseThrow().head());
  }

  @Test
  void whatAnotherHasDoneMeanwhileIsTold() throws Exception {
    String id = kept("One");
    StoreTrouble told =
        assertThrows(
            StoreTrouble.class,
            () -> store.trips().create(id, TripState.of(Trips.named("Two")), LEADER, NOON, "k"));
    assertEquals(StoreTrouble.Kind.CONTENDED, told.kind());
    assertEquals(1, store.trips().find(id).orElseThrow().head());
  }

  @Test
  void twoStartersAtOnceBothGetAWorkingStore() throws Exception {
    store.close();
    ExecutorService pool = Executors.newFixedThreadPool(4);
    try {
      List<Callable<Store>> starters = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        starters.add(this::open);
      }
      for (Future<Store> started : pool.invokeAll(starters)) {
        try (Store each = started.get()) {
          assertTrue(each.ready());
        }
      }
    } finally {
      pool.shutdownNow();
    }
    store = open();
    assertEquals(0, store.trips().countOf("key"));
  }
}
