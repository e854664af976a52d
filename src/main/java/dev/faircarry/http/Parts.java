package dev.faircarry.http;

import dev.faircarry.app.ExplainTrip;
import dev.faircarry.app.JudgeSplit;
import dev.faircarry.app.Rebalance;
import dev.faircarry.app.SolvePool;
import dev.faircarry.app.SplitTrip;
import dev.faircarry.json.PlanAnswers;
import java.util.Optional;

/**
 * What the HTTP service is made of; each new use case becomes a component here.
 *
 * @param kept what stored trips need; without it nothing is stored
 * @param docsVersion version of the bundled documents page
 * @param templatesVersion version of the bundled template library of the page
 */
public record Parts(
    SplitTrip splitTrip,
    JudgeSplit judgeSplit,
    ExplainTrip explainTrip,
    Rebalance rebalance,
    PlanAnswers planAnswers,
    SolvePool pool,
    Optional<KeptParts> kept,
    HttpOptions options,
    String docsVersion,
    String templatesVersion) {}
