package dev.faircarry.app;

import dev.faircarry.check.Verdict;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;

/** A split, the trip it is for, and what the check says of it. */
public record JudgedSplit(Trip trip, Split split, Verdict verdict) {}
