package dev.faircarry.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.access.Role;
import dev.faircarry.access.Sight;
import dev.faircarry.app.Author;
import dev.faircarry.app.Job;
import dev.faircarry.app.SplitResult;
import dev.faircarry.fixture.Trips;
import dev.faircarry.split.Progress;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is shown of a search to somebody who may not know every body mass. */
class SeenBySomeTest {
  private static final Sight SOME = new Sight(Set.of("asha"));

  private static String job(Progress progress, Sight sight) {
    Job job =
        new Job(
            "j",
            "t",
            1,
            1000,
            new Author(Role.LEADER, Optional.empty()),
            Instant.EPOCH,
            Job.State.RUNNING,
            1,
            false,
            Optional.of(progress),
            Optional.empty());
    return new String(KeptWriter.job(job, sight), StandardCharsets.UTF_8);
  }

  /** Two searches of the same trip with two body masses differ in every number. */
  @Test
  void ofProgressOnlyThePhase() {
    Progress light = new Progress(Progress.Phase.PROVING, 170, 169, 3, 81_234);
    Progress heavy = new Progress(Progress.Phase.PROVING, 204, 150, 0, 79_001);
    assertEquals(job(light, SOME), job(heavy, SOME));
    assertTrue(job(light, SOME).contains("\"phase\" : \"proving\""));
    for (String number : new String[] {"170", "169", "81234", "\"provedLevels\" : 3"}) {
      assertTrue(job(light, Sight.ALL).contains(number), number);
      assertFalse(job(light, SOME).contains(number), number);
    }
  }

  @Test
  void ofASearchThatDecidedNothingOnlyThat() {
    SplitResult none = new SplitResult.Undecided(Trips.targets(9000).trip(), 4321, true);
    String some = new String(SeenSplit.write(none, SOME), StandardCharsets.UTF_8);
    assertEquals("{\n  \"result\" : \"undecided\"\n}", some.strip());
    String all = new String(SeenSplit.write(none, Sight.ALL), StandardCharsets.UTF_8);
    assertTrue(all.contains("4321"), all);
  }
}
