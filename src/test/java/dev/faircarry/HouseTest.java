package dev.faircarry;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The house rules: which package may import what.
 *
 * <p>Every rule runs twice: over the main classes, which must keep it, and over the classes of
 * {@code dev.faircarry.housefixture}, which must break it, so that no rule can pass by seeing
 * nothing.
 */
class HouseTest {
  private static final String ROOT = "dev.faircarry";
  private static final String JACKSON = "com.fasterxml.jackson";
  private static final String FIXTURE = "dev.faircarry.housefixture";

  private static final JavaClasses MAIN =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_ARCHIVES)
          .importPackages(ROOT);

  private static final JavaClasses BROKEN = new ClassFileImporter().importPackages(FIXTURE);

  /** Package to the packages it may import; the wiring in the root package may import all. */
  private static final Map<String, Set<String>> MAY_IMPORT = mayImport();

  /** Package to the libraries that it alone may import. */
  private static final Map<String, List<String>> OWNS_LIBRARIES = ownsLibraries();

  /** The packages without clock, chance, input and output, and floating point. */
  private static final List<String> MIDDLE = List.of("unit", "trip", "split", "check", "solve");

  private static Map<String, Set<String>> mayImport() {
    Map<String, Set<String>> table = new LinkedHashMap<>();
    table.put("config", Set.of());
    table.put("log", Set.of());
    table.put("unit", Set.of());
    table.put("trip", Set.of("unit"));
    table.put("split", Set.of("trip", "unit"));
    table.put("check", Set.of("split", "trip", "unit"));
    table.put("choose", Set.of("trip", "unit"));
    table.put("solve", Set.of("choose", "split", "trip", "unit"));
    table.put("effort", Set.of("trip", "unit"));
    table.put("provision", Set.of("effort", "trip", "unit"));
    table.put("kit", Set.of("check", "effort", "split", "trip", "unit"));
    table.put("weigh", Set.of("check", "split", "trip", "unit"));
    table.put("access", Set.of("split", "trip", "unit"));
    table.put(
        "app",
        Set.of(
            "access",
            "weigh",
            "kit",
            "provision",
            "effort",
            "choose",
            "solve",
            "check",
            "split",
            "trip",
            "unit"));
    table.put(
        "json",
        Set.of(
            "access",
            "app",
            "weigh",
            "kit",
            "provision",
            "effort",
            "choose",
            "check",
            "split",
            "trip",
            "unit"));
    table.put("csv", Set.of("app", "weigh", "check", "split", "trip", "unit"));
    table.put("http", Set.of("app", "access", "json", "csv", "check", "weigh", "split", "trip"));
    table.put("store", Set.of("app", "json", "weigh", "trip", "split", "access"));
    table.put(
        "cli",
        Set.of(
            "config",
            "app",
            "json",
            "csv",
            "weigh",
            "kit",
            "provision",
            "effort",
            "choose",
            "check",
            "split",
            "trip"));
    return table;
  }

  private static Map<String, List<String>> ownsLibraries() {
    Map<String, List<String>> table = new LinkedHashMap<>();
    table.put("solve", List.of("org.chocosolver.."));
    table.put("json", List.of("com.fasterxml.jackson..", "tools.jackson.."));
    table.put("csv", List.of("de.siegmar.fastcsv.."));
    table.put("log", List.of("ch.qos.logback.."));
    table.put(
        "http",
        List.of(
            "io.javalin..",
            "org.eclipse.jetty..",
            "jakarta.servlet..",
            "io.micrometer..",
            "io.github.bucket4j.."));
    table.put(
        "store",
        List.of(
            "java.sql..",
            "javax.sql..",
            "org.sqlite..",
            "org.postgresql..",
            "org.flywaydb..",
            "org.jdbi..",
            "com.zaxxer.hikari..",
            "com.google.crypto.tink..",
            "com.github.kagkarlsson.."));
    return table;
  }

  /** A rule, written for any root package, under a name that a test report can show. */
  record House(String name, Function<String, ArchRule> rule) {
    ArchRule under(String root) {
      return rule.apply(root).as(name).allowEmptyShould(true);
    }

    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<House> houseRules() {
    List<House> rules = new ArrayList<>();
    MAY_IMPORT.forEach((name, allowed) -> rules.add(downOnly(name, allowed)));
    OWNS_LIBRARIES.forEach((owner, libraries) -> rules.add(onlyImporter(owner, libraries)));
    rules.add(apart("solve", "check"));
    rules.add(apart("check", "solve"));
    for (String each : MIDDLE) {
      rules.add(noClockChanceOrIo(each));
      rules.add(noFloatingPoint(each));
    }
    rules.add(knownPackagesOnly());
    rules.add(nullMarked());
    rules.add(nothingIsMadeFromANamedType());
    rules.add(nobodyIsAsked());
    return rules.stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("houseRules")
  void mainKeepsTheRule(House house) {
    house.under(ROOT).check(MAIN);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("houseRules")
  void theFixtureBreaksTheRule(House house) {
    assertTrue(
        house.under(FIXTURE).evaluate(BROKEN).hasViolation(),
        () -> "nothing in " + FIXTURE + " breaks the rule: " + house);
  }

  @Test
  void everyKindOfClockChanceAndIoIsCaught() {
    String report = reportOn(noClockChanceOrIo("unit"));
    for (String each :
        List.of(
            "java.io.File",
            "java.nio.file.Path",
            "java.security.SecureRandom",
            "java.time.Clock",
            "java.time.Instant",
            "java.util.Random",
            "java.util.SplittableRandom",
            "java.util.concurrent.ThreadLocalRandom",
            "System.currentTimeMillis()",
            "System.nanoTime()",
            "Math.random()",
            "UUID.randomUUID()",
            "Collections.shuffle(")) {
      assertTrue(report.contains(each), () -> each + " is not in " + report);
    }
  }

  @Test
  void everyPlaceOfFloatingPointIsCaught() {
    String report = reportOn(noFloatingPoint("unit"));
    for (String each : List.of("Halves.field>", "Halves.list>", "Halves.result()", "parameter(")) {
      assertTrue(report.contains(each), () -> each + " is not in " + report);
    }
    assertFalse(report.contains("Halves.whole"), report);
  }

  private static String reportOn(House house) {
    return String.join("\n", house.under(FIXTURE).evaluate(BROKEN).getFailureReport().getDetails());
  }

  @Test
  void rulesSeeTheMainClasses() {
    assertFalse(MAIN.isEmpty());
    assertTrue(MAIN.stream().noneMatch(each -> each.getPackageName().startsWith(FIXTURE)));
  }

  @Test
  void tableHasNoCycle() {
    Set<String> seen = new TreeSet<>();
    for (Map.Entry<String, Set<String>> row : MAY_IMPORT.entrySet()) {
      Set<String> unknown = new TreeSet<>(row.getValue());
      unknown.removeAll(seen);
      assertEquals(Set.of(), unknown, row.getKey() + " may import only what stands above it");
      seen.add(row.getKey());
    }
  }

  private static House downOnly(String name, Set<String> allowed) {
    return new House(
        name + " imports of the house only " + new TreeSet<>(allowed),
        root -> {
          List<String> open = new ArrayList<>();
          open.add(root + "." + name + "..");
          allowed.forEach(each -> open.add(root + "." + each + ".."));
          return noClasses()
              .that()
              .resideInAPackage(root + "." + name + "..")
              .should()
              .dependOnClassesThat(
                  resideInAPackage(root + "..")
                      .and(
                          describe(
                              "are not open to " + name,
                              (JavaClass each) ->
                                  !resideInAnyPackage(open.toArray(String[]::new)).test(each))));
        });
  }

  private static House onlyImporter(String owner, List<String> libraries) {
    return new House(
        owner + " is the only importer of " + libraries,
        root ->
            noClasses()
                .that()
                .resideInAPackage(root + "..")
                .and()
                .resideOutsideOfPackage(root + "." + owner + "..")
                .should()
                .dependOnClassesThat(resideInAnyPackage(libraries.toArray(String[]::new))));
  }

  private static House apart(String one, String other) {
    return new House(
        one + " never imports " + other,
        root ->
            noClasses()
                .that()
                .resideInAPackage(root + "." + one + "..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage(root + "." + other + ".."));
  }

  private static House noClockChanceOrIo(String name) {
    return new House(
        name + " has no clock, no chance, no input and output",
        root ->
            noClasses()
                .that()
                .resideInAPackage(root + "." + name + "..")
                .should()
                .dependOnClassesThat(
                    resideInAnyPackage("java.io..", "java.nio.file..", "java.util.random.."))
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching(
                    "java\\.time\\.(Clock|Instant|InstantSource)"
                        + "|java\\.util\\.(Random|SplittableRandom)"
                        + "|java\\.util\\.concurrent\\.ThreadLocalRandom"
                        + "|java\\.security\\.SecureRandom")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(Math.class, "random")
                .orShould()
                .callMethod(UUID.class, "randomUUID")
                .orShould()
                .callMethod(Collections.class, "shuffle", List.class));
  }

  private static House noFloatingPoint(String name) {
    return new House(
        name + " has no floating point in fields, parameters and results",
        root ->
            classes().that().resideInAPackage(root + "." + name + "..").should(new WholeNumbers()));
  }

  private static House knownPackagesOnly() {
    return new House(
        "every package stands in the table",
        root ->
            classes()
                .that()
                .resideInAPackage(root + "..")
                .should()
                .resideInAnyPackage(
                    Stream.concat(
                            Stream.of(root),
                            MAY_IMPORT.keySet().stream().map(n -> root + "." + n + ".."))
                        .toArray(String[]::new)));
  }

  /** What somebody sends never says which class is made of it. */
  private static House nothingIsMadeFromANamedType() {
    return new House(
        "no document says which class is made of it",
        root ->
            noClasses()
                .that()
                .resideInAPackage(root + "..")
                .should()
                .dependOnClassesThat()
                .haveNameMatching(
                    "java\\.io\\.(ObjectInputStream|ObjectInput|Externalizable)"
                        + "|java\\.beans\\..*|javax\\.script\\..*"
                        + "|com\\.fasterxml\\.jackson\\.databind\\.jsontype\\..*"
                        + "|com\\.fasterxml\\.jackson\\.annotation\\.JsonTypeInfo.*")
                .orShould()
                .callMethod(Class.class, "forName", String.class)
                .orShould()
                .callMethodWhere(
                    describe(
                        "binds a document to a class",
                        call ->
                            call.getTargetOwner().getPackageName().startsWith(JACKSON)
                                && Set.of("readValue", "treeToValue", "convertValue")
                                    .contains(call.getName()))));
  }

  /** No address that somebody sends can be opened by a program that opens none. */
  private static House nobodyIsAsked() {
    return new House(
        "no other service is asked",
        root ->
            noClasses()
                .that()
                .resideInAPackage(root + "..")
                .should()
                .dependOnClassesThat(
                    resideInAnyPackage("java.net.http..", "javax.net.ssl..")
                        .or(
                            describe(
                                "open connections",
                                (JavaClass each) ->
                                    Set.of(
                                            "java.net.URLConnection",
                                            "java.net.HttpURLConnection",
                                            "java.net.Socket")
                                        .contains(each.getName()))))
                .orShould()
                .callMethod(java.net.URL.class, "openStream")
                .orShould()
                .callMethod(java.net.URL.class, "openConnection"));
  }

  private static House nullMarked() {
    return new House(
        "every package has a package-info with @NullMarked",
        root -> classes().that().resideInAPackage(root + "..").should(new BeNullMarked()));
  }

  private static final class WholeNumbers extends ArchCondition<JavaClass> {
    private static final Set<String> FLOATING =
        Set.of("float", "double", Float.class.getName(), Double.class.getName());

    WholeNumbers() {
      super("declare no floating point");
    }

    @Override
    public void check(JavaClass item, ConditionEvents events) {
      item.getFields()
          .forEach(field -> report(item, field.getType(), field.getDescription(), events));
      for (JavaCodeUnit unit : item.getCodeUnits()) {
        report(item, unit.getReturnType(), unit.getDescription(), events);
        unit.getParameterTypes().forEach(type -> report(item, type, unit.getDescription(), events));
      }
    }

    private static void report(
        JavaClass item, JavaType type, String where, ConditionEvents events) {
      type.getAllInvolvedRawTypes().stream()
          .map(raw -> raw.getBaseComponentType().getName())
          .filter(FLOATING::contains)
          .forEach(
              name -> events.add(SimpleConditionEvent.violated(item, where + " has a " + name)));
    }
  }

  private static final class BeNullMarked extends ArchCondition<JavaClass> {
    BeNullMarked() {
      super("stand in a package whose package-info has @NullMarked");
    }

    @Override
    public void check(JavaClass item, ConditionEvents events) {
      if (!item.getPackage().isAnnotatedWith(NullMarked.class)) {
        events.add(
            SimpleConditionEvent.violated(
                item,
                item.getName() + " stands in " + item.getPackageName() + ", not null-marked"));
      }
    }
  }
}
