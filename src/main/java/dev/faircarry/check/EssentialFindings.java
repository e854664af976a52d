package dev.faircarry.check;

import dev.faircarry.trip.KitItem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which essentials somebody, a party, or the whole group lacks on the first morning. */
final class EssentialFindings {
  private final Itinerary itinerary;
  private final Goods goods;
  private final Holdings holdings;
  private final Essentials essentials;
  private final List<Finding> findings = new ArrayList<>();

  EssentialFindings(Itinerary itinerary, Goods goods, Holdings holdings, Essentials essentials) {
    this.itinerary = itinerary;
    this.goods = goods;
    this.holdings = holdings;
    this.essentials = essentials;
  }

  private void add(FindingCode code, List<String> hikers, String message, String remedy) {
    findings.add(
        new Finding(
            code, Severity.CAUTION, hikers, List.of(), List.of(), List.of(), message, remedy));
  }

  /** What a hiker has on the first morning, own and shared. */
  private List<List<String>> coversOf(int hiker) {
    List<List<String>> covers = new ArrayList<>();
    for (KitItem item : itinerary.hikers.get(hiker).kit()) {
      covers.add(item.covers());
    }
    for (Goods.Good good : goods.all) {
      if (holdings.held(good, 1, hiker) > 0) {
        covers.add(good.item().covers());
        if (good.item().goesInto().equals(Optional.of("food"))) {
          covers.add(List.of("food"));
        }
      }
    }
    return covers;
  }

  /** One finding for each gap, the group's and the parties' before those of single hikers. */
  List<Finding> all() {
    Map<String, List<Integer>> parties = new LinkedHashMap<>();
    for (int i = 0; i < itinerary.hikers.size(); i++) {
      parties
          .computeIfAbsent(itinerary.hikers.get(i).party().orElse(""), name -> new ArrayList<>())
          .add(i);
    }
    Map<Integer, List<String>> missing = new LinkedHashMap<>();
    for (Essentials.Kind system : Essentials.Kind.values()) {
      List<Integer> without = new ArrayList<>();
      for (int i = 0; i < itinerary.hikers.size(); i++) {
        if (coversOf(i).stream().noneMatch(system::metBy)) {
          without.add(i);
        }
      }
      boolean personal = essentials.personal().contains(system);
      if (without.size() == itinerary.hikers.size()) {
        nobodyHas(system, personal);
      } else if (personal) {
        without.forEach(
            i -> missing.computeIfAbsent(i, k -> new ArrayList<>()).add(system.words()));
      } else {
        parties.forEach((name, members) -> party(system, name, members, without));
      }
    }
    missing.forEach(
        (i, systems) ->
            add(
                FindingCode.ESSENTIAL_MISSING,
                List.of(itinerary.hikers.get(i).id()),
                itinerary.name(i) + " has no own " + String.join(", ", systems) + ".",
                "Pack it, or say with \"covers\" what of the kit does it."));
    return findings;
  }

  private void nobodyHas(Essentials.Kind system, boolean personal) {
    add(
        FindingCode.NEED_NOT_COVERED,
        List.of(),
        "Nothing that is carried covers " + system.words() + ".",
        personal
            ? "Everybody packs it, or says with \"covers\" what of the kit does it."
            : "Take it, or say with \"covers\" what does it.");
  }

  private void party(
      Essentials.Kind system, String name, List<Integer> members, List<Integer> without) {
    if (without.containsAll(members)) {
      add(
          FindingCode.NEED_NOT_COVERED,
          members.stream().map(i -> itinerary.hikers.get(i).id()).toList(),
          (name.isEmpty() ? "Those without a party have" : "Party “" + name + "” has")
              + " nothing that covers "
              + system.words()
              + ".",
          "Give it to somebody there, or take one more.");
    }
  }
}
