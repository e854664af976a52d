package dev.faircarry.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Writes the large demo trip: 30 hikers, 200 pieces, three days. Run it to make the file again; the
 * same seed gives the same file.
 */
public final class ManyHands {
  static final Path FILE = Path.of("demo-data", "many-hands.json");
  private static final long SEED = 20_260_612L;
  private static final int PIECES = 200;
  private static final List<String> NAMES =
      List.of(
          "Abena", "Boris", "Carmen", "Dilan", "Elin", "Farid", "Greta", "Hiro", "Imani", "Jonas",
          "Keiko", "Luca", "Maren", "Nikos", "Olga", "Petra", "Qadir", "Rania", "Stefan", "Thandi",
          "Umar", "Vilma", "Wanda", "Ximena", "Yusuf", "Zora", "Anouk", "Bilal", "Ciara", "Davit");
  private static final List<String> THINGS =
      List.of(
          "Hand line",
          "Kitchen tarp",
          "Folding saw",
          "Repair things",
          "Storm bag, large",
          "Storm bag, small",
          "Trowel set",
          "Map set",
          "Distress beacon",
          "Radio, first",
          "Radio, second",
          "Spare batteries",
          "Solar panel",
          "Bird guide",
          "Plant guide",
          "Sketch box",
          "Hand drum",
          "Kite",
          "Ball",
          "Lantern, first",
          "Lantern, second",
          "Washing-up things",
          "Chopping board",
          "Sieve",
          "Big kettle",
          "Spices",
          "Cooking oil",
          "Salt and sugar",
          "Coffee",
          "Tea",
          "Dried fruit",
          "Nuts",
          "Hard cheese",
          "Flat bread",
          "Soap",
          "Clothes line",
          "Insect net",
          "Ground sheet",
          "Hammock",
          "Thermometer",
          "Wind meter",
          "Rain gauge",
          "Sample bags",
          "Water bag",
          "Spare mat",
          "Spare mugs",
          "Song books");

  private final SplittableRandom random = new SplittableRandom(SEED);
  private int pieces;

  private ManyHands() {}

  public static void main(String[] arguments) throws IOException {
    Files.writeString(FILE, document());
  }

  /** The whole document. */
  static String document() {
    return new ManyHands().write();
  }

  private String write() {
    List<String> hikers = new ArrayList<>();
    for (int i = 0; i < NAMES.size(); i++) {
      hikers.add(hiker(i));
    }
    List<String> shared = shared();
    if (pieces != PIECES) {
      throw new IllegalStateException(pieces + " pieces");
    }
    return """
        {
          "format": "faircarry-trip/1",
          "name": "Thirty on the plateau", "days": 3,
          "policy": { "targetFraction": 0.20, "capFraction": 0.30, "basis": "load", "grain": 5 },
          "hikers": [
        %s
          ],
          "shared": [
        %s
          ],
          "rules": [
        %s
          ]
        }
        """
        .formatted(lines(hikers), lines(shared), lines(rules()));
  }

  private static String lines(List<String> items) {
    return "    " + String.join(",\n    ", items);
  }

  private String hiker(int i) {
    String name = NAMES.get(i);
    int bodyHectograms = random.nextInt(500, 960);
    int kitPermille = random.nextInt(105, 130);
    int kitGrams = bodyHectograms * 100 * kitPermille / 1000;
    int packGrams = random.nextInt(18, 42) * 50;
    int sleepGrams = random.nextInt(14, 36) * 50;
    int waterGrams = 2 * random.nextInt(21, 23) * 50;
    int clothesGrams = (kitGrams - packGrams - sleepGrams - waterGrams) / 10 * 10;
    return """
        { "id": "%s", "name": "%s", "bodyMass": "%d.%d kg", "party": "%s",
              "pack": { "mass": "%d g" }, "kit": [
                { "id": "sleep", "name": "Sleeping things", "mass": "%d g" },
                { "id": "clothes", "name": "Clothes and small things", "mass": "%d g" },
                { "id": "boots", "name": "Boots", "mass": "%d g", "worn": true },
                { "id": "water", "name": "Water", "mass": "%d g" } ] }\
        """
        .formatted(
            id(name),
            name,
            bodyHectograms / 10,
            bodyHectograms % 10,
            List.of("dawn", "noon", "dusk").get(i % 3),
            packGrams,
            sleepGrams,
            clothesGrams,
            random.nextInt(10, 30) * 50,
            waterGrams);
  }

  private List<String> shared() {
    List<String> shared = new ArrayList<>();
    for (int i = 1; i <= 8; i++) {
      shared.add(shelter(i));
    }
    for (int i = 1; i <= 6; i++) {
      shared.add(whole("stove-" + i, "Stove " + i, 90, 400, ", \"covers\": [\"flame\"]"));
      shared.add(whole("pot-" + i, "Pot " + i, 350, 900, ""));
    }
    for (int i = 1; i <= 4; i++) {
      shared.add(
          whole(
              "filter-" + i, "Water filter " + i, 90, 300, ", \"covers\": [\"water-treatment\"]"));
    }
    for (int i = 1; i <= 3; i++) {
      shared.add(
          whole("first-aid-" + i, "First aid " + i, 250, 700, ", \"covers\": [\"first-aid\"]"));
    }
    shared.add(
        counted(
            "gas",
            "Gas cartridge",
            12,
            375,
            ", \"covers\": [\"fuel\"], \"use\": { \"kind\": \"evenly\", \"leaves\": \"150 g\" }"));
    shared.add(counted("breakfast", "Breakfast bag for three", 30, 360, perDay(6)));
    shared.add(counted("lunch", "Lunch bag for three", 30, 540, perDay(0)));
    shared.add(counted("dinner", "Dinner bag for three", 30, 610, perDay(25)));
    for (String thing : THINGS) {
      shared.add(whole(id(thing), thing, 120, 1600, ""));
    }
    return shared;
  }

  private static String perDay(int leavesGrams) {
    String leaves = leavesGrams == 0 ? "" : ", \"leaves\": \"" + leavesGrams + " g\"";
    return ", \"use\": { \"kind\": \"units-per-day\", \"perDay\": 10" + leaves + " }";
  }

  private String shelter(int i) {
    pieces += 4;
    return """
        { "id": "shelter-%d", "name": "Shelter %d", "sleeps": 4, "parts": [
                { "id": "fly", "name": "Fly", "mass": "%d g" },
                { "id": "inner", "name": "Inner", "mass": "%d g" },
                { "id": "poles", "name": "Poles", "mass": "%d g" },
                { "id": "pegs", "name": "Pegs", "mass": "%d g" } ] }\
        """
        .formatted(i, i, grams(900, 1300), grams(600, 900), grams(500, 800), grams(180, 320));
  }

  private String whole(String id, String name, int fromGrams, int toGrams, String more) {
    pieces++;
    return "{ \"id\": \"%s\", \"name\": \"%s\", \"mass\": \"%d g\"%s }"
        .formatted(id, name, grams(fromGrams, toGrams), more);
  }

  private String counted(String id, String name, int count, int unitGrams, String more) {
    pieces += count;
    return "{ \"id\": \"%s\", \"name\": \"%s\", \"count\": %d, \"unitMass\": \"%d g\"%s }"
        .formatted(id, name, count, unitGrams, more);
  }

  private int grams(int from, int to) {
    return random.nextInt(from / 10, to / 10 + 1) * 10;
  }

  private static List<String> rules() {
    List<String> rules = new ArrayList<>();
    for (int i = 1; i <= 6; i++) {
      rules.add(
          "{ \"id\": \"kitchen-%d\", \"kind\": \"together\", \"pieces\": [\"stove-%d\", \"pot-%d\"] }"
              .formatted(i, i, i));
    }
    rules.add(
        "{ \"id\": \"clean-water\", \"kind\": \"party-has\", \"covers\": \"water-treatment\","
            + " \"atLeast\": 1 }");
    rules.add(
        "{ \"id\": \"aid-at-hand\", \"kind\": \"party-has\", \"covers\": \"first-aid\","
            + " \"atLeast\": 1 }");
    rules.add(
        "{ \"id\": \"two-radios\", \"kind\": \"apart\", \"pieces\": [\"radio-first\","
            + " \"radio-second\"] }");
    rules.add(
        "{ \"id\": \"drum-with-hiro\", \"kind\": \"pinned\", \"pieces\": [\"hand-drum\"],"
            + " \"hiker\": \"hiro\" }");
    return rules;
  }

  private static String id(String name) {
    return name.toLowerCase(java.util.Locale.ROOT).replace(",", "").replace(' ', '-');
  }
}
