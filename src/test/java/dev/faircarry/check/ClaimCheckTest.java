package dev.faircarry.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.faircarry.fixture.Splits;
import dev.faircarry.fixture.Trips;
import dev.faircarry.split.Proof;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

/** Claims that agree with the split pass; each that does not is refused. */
class ClaimCheckTest {
  private static final Trips THREE = Trips.targets(1000, 1000).pieces(100, 100, 100);

  private static Splits twoAndOne() {
    return Splits.of("a", "p1", "p2").and("b", "p3");
  }

  /** Its list is 40, 20. */
  private static int wrong(Proof proof) {
    return wrong(THREE, twoAndOne(), proof);
  }

  private static int wrong(Trips trips, Splits split, Proof proof) {
    List<Finding> found = ClaimCheck.of(trips.trip(), Judged.verdict(trips, split), proof);
    found.forEach(f -> assertEquals(FindingCode.CLAIM_WRONG, f.code()));
    found.forEach(f -> assertEquals(Severity.STOP, f.severity()));
    return found.size();
  }

  private static Proof all(int levels, int byBound) {
    return new Proof(levels, levels, byBound, OptionalLong.empty(), true, 1, false);
  }

  private static Proof some(int levels, int proved, long bound, boolean excess) {
    return new Proof(levels, proved, 0, OptionalLong.of(bound), excess, 1, false);
  }

  @Test
  void consistentClaimsPass() {
    assertEquals(0, wrong(all(2, 0)));
    assertEquals(0, wrong(some(2, 0, 40, true)));
    assertEquals(0, wrong(some(2, 1, 20, true)));
    assertEquals(0, wrong(some(2, 0, 30, true)));
  }

  @Test
  void levelsAreTheHikerMornings() {
    assertEquals(1, wrong(all(1, 0)));
    assertEquals(1, wrong(all(3, 0)));
  }

  @Test
  void aBoundIsNotAboveWhatItBounds() {
    assertEquals(1, wrong(some(2, 0, 41, true)));
    assertEquals(1, wrong(some(2, 1, 21, true)));
  }

  @Test
  void whatFollowsFromBoundsIsRecomputed() {
    assertEquals(1, wrong(all(2, 1)));
    Trips two = Trips.targets(1000, 1000).pieces(100, 100);
    Splits even = Splits.of("a", "p1").and("b", "p2");
    assertEquals(0, wrong(two, even, all(2, 2)));
  }

  @Test
  void levelsComeAfterTheExcess() {
    Trips capped =
        Trips.days(1)
            .hiker("a", h -> h.target(1000).capLoad(100))
            .hiker("b", h -> h.target(1000))
            .pieces(100, 100, 100);
    assertEquals(1, wrong(capped, twoAndOne(), some(2, 1, 20, false)));
    assertEquals(0, wrong(capped, twoAndOne(), some(2, 0, 40, false)));
    assertEquals(0, wrong(capped, twoAndOne(), some(2, 1, 20, true)));
  }

  @Test
  void aSplitThatBreaksRulesIsNotTheBest() {
    Trips ruled = Trips.targets(1000, 1000).pieces(100, 100, 100).apart("p1", "p2");
    assertEquals(1, wrong(ruled, twoAndOne(), all(2, 0)));
    assertEquals(0, wrong(ruled, Splits.of("a", "p1").and("b", "p2", "p3"), all(2, 0)));
  }
}
