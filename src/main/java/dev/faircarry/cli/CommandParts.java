package dev.faircarry.cli;

import dev.faircarry.app.ExplainTrip;
import dev.faircarry.app.JudgeSplit;
import dev.faircarry.app.Rebalance;
import dev.faircarry.app.SplitTrip;
import dev.faircarry.json.PlanAnswers;
import java.util.Map;

/**
 * What the commands are made of; each new use case becomes a component here.
 *
 * @param environment variables that settings may be read from
 */
public record CommandParts(
    SplitTrip splitTrip,
    JudgeSplit judgeSplit,
    ExplainTrip explainTrip,
    Rebalance rebalance,
    PlanAnswers planAnswers,
    ServeCommand.Service service,
    BackupCommand.Copying copying,
    Map<String, String> environment,
    String version) {}
