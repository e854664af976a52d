package dev.faircarry.http;

import dev.faircarry.access.Sight;
import dev.faircarry.app.CheckDeparture;
import dev.faircarry.app.JudgeSplit;
import dev.faircarry.app.JudgedSplit;
import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.MassUnits;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.app.SolvePool;
import dev.faircarry.app.StoredSplit;
import dev.faircarry.app.StoredTrip;
import dev.faircarry.app.Visit;
import dev.faircarry.app.card.Absence;
import dev.faircarry.app.card.Absences;
import dev.faircarry.app.card.Card;
import dev.faircarry.app.card.CardText;
import dev.faircarry.app.card.Cards;
import dev.faircarry.check.Essentials;
import dev.faircarry.json.CardWriter;
import dev.faircarry.json.SeenDeparture;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** What hikers take along on paper, and the last look before the group leaves. */
final class CardRoutes implements Routes.Resource {
  private static final String TRIP = "/v1/trips/{trip}";
  private static final String TEXT = "text/plain";
  private static final List<String> UNITS = List.of("metric", "us");

  private final KeptTrips trips;
  private final JudgeSplit judge;
  private final SolvePool pool;
  private final Absences absences;
  private final CheckDeparture checkDeparture;

  CardRoutes(KeptTrips trips, Parts all) {
    this.trips = trips;
    this.judge = all.judgeSplit();
    this.pool = all.pool();
    this.absences = new Absences(all.rebalance());
    this.checkDeparture = new CheckDeparture(all.splitTrip());
  }

  @Override
  public void register(Routes routes) {
    routes
        .get(TRIP + "/cards", this::all)
        .get(TRIP + "/hikers/{hiker}/card", this::one)
        .get(TRIP + "/absences", this::absences)
        .get(TRIP + "/departure-check", this::departure);
  }

  /** A split that is asked about, with what goes with it. */
  private record Asked(
      Visit visit, StoredSplit split, JudgedSplit judged, Sight sight, boolean stale) {
    StoredTrip newest() {
      return visit.stored();
    }

    CardWriter writer() {
      return new CardWriter(judged, sight);
    }
  }

  private Asked asked(Context ctx) {
    Visit visit = Visits.enter(ctx, trips);
    StoredTrip newest = visit.stored();
    String id =
        Optional.ofNullable(ctx.queryParam("split"))
            .or(newest.state()::agreedSplit)
            .orElseThrow(
                () ->
                    new ProblemException(
                        ProblemCode.NOT_FOUND, "The group has not agreed on a split yet."));
    StoredSplit split =
        trips.store().trips().split(newest.id(), id).orElseThrow(CardRoutes::nowhere);
    StoredTrip then =
        trips.store().trips().find(newest.id(), split.revision()).orElseThrow(CardRoutes::nowhere);
    return new Asked(
        visit,
        split,
        judge.judge(then.state().trip(), split.split()),
        KeptTrips.sightOf(visit, then),
        newest.stale(split));
  }

  private List<Card> cards(Asked asked) {
    return Cards.of(asked.judged(), trips.agreedBefore(asked.split()).map(StoredSplit::split));
  }

  private void all(Context ctx) {
    String kind = Accepting.oneOf(ctx, List.of(Accepting.JSON, TEXT));
    Parameters.known(ctx, "split", "units");
    MassUnits units = units(ctx);
    Asked asked = asked(ctx);
    List<Card> cards = cards(asked);
    if (kind.equals(TEXT)) {
      CardText text = new CardText(asked.judged().trip(), units, asked.sight());
      List<Absence> cases = cases(asked);
      text(
          ctx,
          CardText.together(
              cards.stream().map(card -> text.of(card, cases, asked.stale())).toList()));
    } else {
      Answers.json(ctx, asked.writer().cards(asked.newest(), asked.split(), cards));
    }
  }

  private void one(Context ctx) {
    String kind = Accepting.oneOf(ctx, List.of(Accepting.JSON, TEXT));
    Parameters.known(ctx, "split", "units");
    MassUnits units = units(ctx);
    Asked asked = asked(ctx);
    String hiker = ctx.pathParam("hiker");
    Card card =
        cards(asked).stream()
            .filter(each -> each.hiker().id().equals(hiker))
            .findFirst()
            .orElseThrow(CardRoutes::nowhere);
    if (kind.equals(TEXT)) {
      CardText text = new CardText(asked.judged().trip(), units, asked.sight());
      text(ctx, text.of(card, cases(asked), asked.stale()));
    } else {
      Answers.json(ctx, asked.writer().card(asked.newest(), asked.split(), card));
    }
  }

  private void absences(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx, "split");
    Asked asked = asked(ctx);
    Answers.json(ctx, asked.writer().absences(asked.split(), cases(asked)));
  }

  private List<Absence> cases(Asked asked) {
    return absences.of(
        asked.split().id(),
        pool::run,
        asked.judged().trip(),
        asked.judged().split(),
        ServiceLimits.DEFAULT_EFFORT_STEPS);
  }

  private void departure(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx, "split");
    Asked asked = asked(ctx);
    Sight sight = asked.visit().sight();
    CheckDeparture.Asked question =
        new CheckDeparture.Asked(
            asked.newest().state().trip(),
            asked.judged().split(),
            Optional.of(asked.judged().trip()),
            Essentials.DEFAULT);
    Answers.json(
        ctx,
        pool.run(
            () ->
                SeenDeparture.write(
                    asked.newest(),
                    asked.split(),
                    checkDeparture.check(question, ServiceLimits.DEPARTURE_EFFORT_STEPS, sight),
                    sight)));
  }

  private static MassUnits units(Context ctx) {
    return Parameters.word(ctx, "units", UNITS).equals("us") ? MassUnits.US : MassUnits.METRIC;
  }

  private static void text(Context ctx, String text) {
    Answers.bytes(ctx, "text/plain; charset=utf-8", text.getBytes(StandardCharsets.UTF_8));
    ctx.header("Cache-Control", "no-store");
  }

  private static ProblemException nowhere() {
    return new ProblemException(ProblemCode.NOT_FOUND, "No resource has this address.");
  }
}
