package dev.faircarry.housefixture.unit;

import java.io.File;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;

/** Asks everything that the middle must be told. */
abstract class ClockAndChance {
  abstract Instant now(Clock clock);

  abstract Path read(File file);

  abstract long draw(Random one, SplittableRandom two, ThreadLocalRandom three, SecureRandom four);

  String ask(List<String> list) {
    Collections.shuffle(list);
    return System.currentTimeMillis()
        + System.nanoTime()
        + Math.random()
        + UUID.randomUUID().toString();
  }
}
