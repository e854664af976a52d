package dev.faircarry.app;

import dev.faircarry.check.Completed;
import dev.faircarry.check.Finding;
import dev.faircarry.check.Verdict;
import dev.faircarry.split.Proof;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.util.List;

/** The port through which use cases have a split recomputed by somebody who did not make it. */
public interface Judge {

  /** What an independent reading of trip and split says. */
  Verdict verdict(Trip trip, Split split);

  /** A split made by hand with the opening plan filled in where it says nothing. */
  Completed completed(Trip trip, Split split);

  /** What is wrong with a claim about a split; nothing when the claim holds. */
  List<Finding> claims(Trip trip, Split split, Verdict verdict, Proof proof);

  /** How many levels of a split, from the highest, follow from bounds that the judge recomputes. */
  int levelsByBound(Trip trip, Verdict verdict);
}
