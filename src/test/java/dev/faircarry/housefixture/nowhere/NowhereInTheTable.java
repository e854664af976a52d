package dev.faircarry.housefixture.nowhere;

/** Stands in a package that the table does not know. */
public final class NowhereInTheTable {}
