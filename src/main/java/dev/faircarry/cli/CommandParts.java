package dev.faircarry.cli;

import dev.faircarry.app.ExplainTrip;
import dev.faircarry.app.JudgeSplit;
import dev.faircarry.app.Rebalance;
import dev.faircarry.app.SplitTrip;
import dev.faircarry.json.PlanAnswers;

/** What the commands are made of; each new use case becomes a component here. */
public record CommandParts(
    SplitTrip splitTrip,
    JudgeSplit judgeSplit,
    ExplainTrip explainTrip,
    Rebalance rebalance,
    PlanAnswers planAnswers,
    ServeCommand.Service service,
    String version) {}
