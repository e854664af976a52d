package dev.faircarry.config;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.app.ServiceLimits;
import dev.faircarry.app.StoreLimits;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettingsReaderTest {
  private static Settings good(Map<String, String> environment, Map<Setting, String> flags) {
    var result = new SettingsReader(environment, flags).read();
    return assertInstanceOf(SettingsReader.Result.Good.class, result, result::toString).settings();
  }

  private static List<BadSetting> bad(Map<String, String> environment, Map<Setting, String> flags) {
    var result = new SettingsReader(environment, flags).read();
    return assertInstanceOf(SettingsReader.Result.Bad.class, result).faults();
  }

  @Test
  void withoutAnythingSetTheStandardHolds() {
    Settings settings = good(Map.of(), Map.of());
    assertEquals(ServiceLimits.DEFAULT_HOST, settings.host());
    assertEquals(ServiceLimits.DEFAULT_PORT, settings.port());
    assertEquals(Optional.empty(), settings.databaseUrl());
    assertEquals(Path.of("faircarry.db"), settings.databaseFile());
    assertEquals(Optional.empty(), settings.keyset());
    assertEquals(Path.of("faircarry.key"), settings.keyFile());
    assertEquals(Optional.empty(), settings.creationKey());
    assertEquals(List.of(), settings.corsOrigins());
    assertEquals(StoreLimits.REQUESTS_PER_MINUTE, settings.requestsPerMinute());
    assertFalse(settings.behindProxy());
    assertTrue(settings.metrics());
    assertEquals(Settings.LogForm.TEXT, settings.log());
  }

  @Test
  void everythingCanBeSetByTheEnvironment() {
    Settings settings =
        good(
            Map.ofEntries(
                Map.entry("FAIRCARRY_HTTP_HOST", "0.0.0.0"),
                Map.entry("FAIRCARRY_HTTP_PORT", "9090"),
                Map.entry("FAIRCARRY_DATABASE_URL", "postgres://u:p@db:5432/trips"),
                Map.entry("FAIRCARRY_DATABASE_FILE", "/data/trips.db"),
                Map.entry("FAIRCARRY_KEYSET", "{}"),
                Map.entry("FAIRCARRY_KEY_FILE", "/keys/one"),
                Map.entry("FAIRCARRY_CREATION_KEY", "long enough"),
                Map.entry("FAIRCARRY_CORS_ORIGINS", "https://trips.example, http://localhost:3000"),
                Map.entry("FAIRCARRY_REQUESTS_PER_MINUTE", "6000"),
                Map.entry("FAIRCARRY_BEHIND_PROXY", "yes"),
                Map.entry("FAIRCARRY_METRICS", "OFF"),
                Map.entry("FAIRCARRY_LOG", "json")),
            Map.of());
    assertEquals(
        new Settings(
            "0.0.0.0",
            9090,
            Optional.of("postgres://u:p@db:5432/trips"),
            Path.of("/data/trips.db"),
            Optional.of("{}"),
            Path.of("/keys/one"),
            Optional.of("long enough"),
            List.of("https://trips.example", "http://localhost:3000"),
            6000,
            true,
            false,
            Settings.LogForm.JSON),
        settings);
    assertEquals("Settings[0.0.0.0:9090]", settings.toString());
  }

  @Test
  void flagWinsAndAnEmptyVariableIsNone() {
    Settings settings =
        good(
            Map.of("FAIRCARRY_HTTP_PORT", "9090", "FAIRCARRY_CREATION_KEY", ""),
            Map.of(Setting.HTTP_PORT, "0"));
    assertEquals(0, settings.port());
    assertEquals(Optional.empty(), settings.creationKey());
    assertEquals(
        "--port",
        bad(Map.of("FAIRCARRY_HTTP_PORT", "9090"), Map.of(Setting.HTTP_PORT, "x")).get(0).where());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "HTTP_HOST|a b|not-a-host",
        "HTTP_PORT|eighty|not-a-number",
        "HTTP_PORT|65536|out-of-range",
        "HTTP_PORT|-1|out-of-range",
        "HTTP_PORT|99999999999999999999|not-a-number",
        "DATABASE_URL|mysql://u:secret@h/d|not-a-database",
        "CREATION_KEY|secret|too-short",
        "CORS_ORIGINS|*|not-an-origin",
        "CORS_ORIGINS|null|not-an-origin",
        "CORS_ORIGINS|https://*.example|not-an-origin",
        "CORS_ORIGINS|https://trips.example/|not-an-origin",
        "CORS_ORIGINS|https://Trips.example|not-an-origin",
        "CORS_ORIGINS|ftp://trips.example|not-an-origin",
        "CORS_ORIGINS|https://good.example,trips.example|not-an-origin",
        "REQUESTS_PER_MINUTE|0|out-of-range",
        "BEHIND_PROXY|maybe|not-a-word",
        "METRICS|yes|not-a-word",
        "LOG|xml|not-a-word",
        "DATABASE_FILE|' '|not-a-file",
        "KEY_FILE|' '|not-a-file",
      })
  void whatCannotBeUsedIsSaidWithACode(Setting setting, String value, String code) {
    List<BadSetting> faults = bad(Map.of(setting.variable(), value), Map.of());
    assertEquals(1, faults.size(), faults::toString);
    assertEquals(code, faults.get(0).code().text());
    assertEquals(setting.variable(), faults.get(0).where());
    assertTrue(faults.get(0).text().startsWith(setting.variable() + ": " + code + ". "));
    assertFalse(faults.get(0).text().contains("secret@"), faults::toString);
  }

  @Test
  void everythingWrongIsSaidAtOnce() {
    assertEquals(2, bad(Map.of("FAIRCARRY_HTTP_PORT", "x", "FAIRCARRY_LOG", "y"), Map.of()).size());
  }

  @Test
  void whatIsProbablyMisspeltIsNamed() {
    SettingsReader reader =
        new SettingsReader(
            Map.of("FAIRCARRY_CREATON_KEY", "x", "FAIRCARRY_LOG", "json", "PATH", "/"), Map.of());
    assertEquals(List.of("FAIRCARRY_CREATON_KEY"), reader.unknown());
  }

  @Test
  void secretsHaveNoFlags() {
    for (Setting secret : List.of(Setting.DATABASE_URL, Setting.KEYSET, Setting.CREATION_KEY)) {
      assertEquals(Optional.empty(), secret.flag());
    }
  }
}
