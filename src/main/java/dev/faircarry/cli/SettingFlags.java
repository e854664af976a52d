package dev.faircarry.cli;

import dev.faircarry.config.BadSetting;
import dev.faircarry.config.Setting;
import dev.faircarry.config.Settings;
import dev.faircarry.config.SettingsReader;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.ISetter;
import picocli.CommandLine.Model.OptionSpec;

/** The flags of a command that stand for settings, and what they and the environment say. */
final class SettingFlags {
  private final Map<String, String> environment;
  private final Map<Setting, String> stated = new EnumMap<>(Setting.class);

  SettingFlags(Map<String, String> environment) {
    this.environment = environment;
  }

  /** A command with a flag for each of these settings that has one. */
  CommandLine added(CommandLine command, Iterable<Setting> settings) {
    CommandSpec spec = command.getCommandSpec();
    for (Setting setting : settings) {
      setting.flag().ifPresent(flag -> spec.addOption(option(setting, flag)));
    }
    return command;
  }

  private OptionSpec option(Setting setting, String flag) {
    String standard = setting.standard().isEmpty() ? "none" : setting.standard();
    return OptionSpec.builder(flag)
        .type(String.class)
        .paramLabel(setting.parameter())
        .description(
            setting.meaning() + " (default: " + standard + "; or " + setting.variable() + ")")
        .setter(new Setter(setting))
        .build();
  }

  /** Writes down what stands on the command line. */
  private final class Setter implements ISetter {
    private final Setting setting;

    Setter(Setting setting) {
      this.setting = setting;
    }

    @Override
    public <T> T set(T value) {
      // Before each run the library sets what stands for no value, which is none here.
      if (value != null) {
        stated.put(setting, String.valueOf(value));
      }
      return value;
    }
  }

  /** Whether the flag of a setting stands on the command line. */
  boolean isStated(Setting setting) {
    return stated.containsKey(setting);
  }

  /**
   * Everything that is set.
   *
   * @throws BadInput with a line for each setting that cannot be used
   */
  Settings read(Console console) {
    SettingsReader reader = new SettingsReader(environment, stated);
    reader.unknown().forEach(name -> console.complain(name + " is no setting; it is passed over."));
    SettingsReader.Result result = reader.read();
    if (result instanceof SettingsReader.Result.Bad bad) {
      throw new BadInput(
          bad.faults().stream().map(BadSetting::text).collect(Collectors.joining("\n")));
    }
    return ((SettingsReader.Result.Good) result).settings();
  }
}
