package dev.faircarry.http;

import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.ReplyStore;
import dev.faircarry.app.StoreLimits;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * POST with an Idempotency-Key is done once, however often it is sent: what it does and what it
 * answered are kept in one transaction, and the answer is given again for a day.
 */
final class OnceOnly {
  private static final Pattern KEY =
      Pattern.compile("[\\x21-\\x7e]{1," + StoreLimits.KEY_LENGTH + "}");

  private final KeptTrips trips;

  OnceOnly(KeptTrips trips) {
    this.trips = trips;
  }

  /**
   * What a request answered.
   *
   * @param location where what it made is found; empty if it made nothing
   * @param kept what is remembered of the body, which must hold no secret
   * @param body what is sent this time
   */
  record Answer(int status, String location, byte[] kept, byte[] body) {
    static Answer of(int status, String location, byte[] body) {
      return new Answer(status, location, body, body);
    }
  }

  /**
   * Does a request, or answers as before.
   *
   * @param scope who asks; keys of different scopes are different keys
   * @param work does it, within the transaction it is given
   */
  Answer run(Context ctx, String scope, byte[] body, Function<KeptTrips, Answer> work) {
    String key = ctx.header("Idempotency-Key");
    if (key == null) {
      return trips.store().atomically(together -> work.apply(trips.in(together)));
    }
    if (!KEY.matcher(key).matches()) {
      throw new ProblemException(
          ProblemCode.BAD_REQUEST,
          "An Idempotency-Key has 1 to " + StoreLimits.KEY_LENGTH + " visible ASCII characters.");
    }
    String request = hash(ctx, body);
    return trips
        .store()
        .atomically(
            together -> {
              Optional<ReplyStore.Reply> before =
                  together.replies().find(scope, key, trips.now().minus(StoreLimits.KEY_KEPT));
              if (before.isPresent()) {
                return again(before.get(), request);
              }
              Answer answer = work.apply(trips.in(together));
              together
                  .replies()
                  .remember(
                      scope,
                      key,
                      new ReplyStore.Reply(
                          request, answer.status(), answer.location(), answer.kept()),
                      trips.now());
              return answer;
            });
  }

  /**
   * The answer that is remembered for a request, if it was done before; for work too long to do
   * within a transaction.
   */
  Optional<Answer> remembered(Context ctx, String scope, byte[] body) {
    return Optional.ofNullable(ctx.header("Idempotency-Key"))
        .flatMap(
            key ->
                trips.store().replies().find(scope, key, trips.now().minus(StoreLimits.KEY_KEPT)))
        .map(reply -> again(reply, hash(ctx, body)));
  }

  private static Answer again(ReplyStore.Reply before, String request) {
    if (!before.request().equals(request)) {
      throw new ProblemException(
          ProblemCode.KEY_REUSED, "This Idempotency-Key belongs to another request.");
    }
    return Answer.of(before.status(), before.location(), before.body());
  }

  /** Sends an answer. */
  static void send(Context ctx, Answer answer) {
    ctx.status(answer.status());
    if (!answer.location().isEmpty()) {
      ctx.header("Location", answer.location());
    }
    Answers.json(ctx, answer.body());
  }

  private static String hash(Context ctx, byte[] body) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      digest.update((ctx.method() + " " + ctx.path() + "\n").getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest.digest(body));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
