package dev.faircarry.check;

import dev.faircarry.trip.PieceRef;
import java.util.ArrayList;
import java.util.List;

/** Findings as they are collected. */
final class FindingList {
  private final List<Finding> findings = new ArrayList<>();

  void add(Finding finding) {
    findings.add(finding);
  }

  void stop(
      FindingCode code, List<String> hikers, List<PieceRef> pieces, String message, String remedy) {
    stop(code, hikers, pieces, List.of(), message, remedy);
  }

  void stop(
      FindingCode code,
      List<String> hikers,
      List<PieceRef> pieces,
      List<Integer> days,
      String message,
      String remedy) {
    add(new Finding(code, Severity.STOP, hikers, pieces, List.of(), days, message, remedy));
  }

  /** Everything found, gravest first, otherwise in the order found. */
  List<Finding> sorted() {
    List<Finding> sorted = new ArrayList<>(findings);
    sorted.sort((x, y) -> x.severity().compareTo(y.severity()));
    return sorted;
  }
}
