package org.hedgerow.app;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.IDefaultValueProvider;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * What options are set to where the command line is silent: the environment, then the settings
 * file.
 */
final class Settings implements IDefaultValueProvider {
  private static final String PREFIX = "HEDGEROW_";

  private final Map<String, String> environment;
  private final SettingsFile file;

  private Settings(Map<String, String> environment, SettingsFile file) {
    this.environment = environment;
    this.file = file;
  }

  /**
   * @param arguments the command line, in which the file may be named
   * @throws UnusableSettingsException if the file can't be read or holds what is no setting
   */
  static Settings read(String[] arguments, Map<String, String> environment, CommandLine commands)
      throws UnusableSettingsException {
    Optional<String> path =
        ConfigOption.in(arguments)
            .or(() -> Optional.ofNullable(environment.get(PREFIX + "CONFIG")))
            .filter(text -> !text.isBlank());
    return new Settings(
        environment,
        path.isPresent() ? SettingsFile.read(path.get(), commands) : SettingsFile.NONE);
  }

  @Override
  public @Nullable String defaultValue(ArgSpec argument) {
    if (!(argument instanceof OptionSpec option) || option.usageHelp() || option.versionHelp()) {
      return null;
    }
    String name = name(option);
    return fromEnvironment(name).or(() -> file.value(name)).orElse(null);
  }

  /** Where an option that isn't on the command line has its value from. */
  Optional<String> source(OptionSpec option) {
    String name = name(option);
    return fromEnvironment(name)
        .map(value -> variable(name))
        .or(() -> file.value(name).map(value -> "the settings file"));
  }

  /** An empty variable counts as none: that is how container tools pass on what nobody set. */
  private Optional<String> fromEnvironment(String name) {
    return Optional.ofNullable(environment.get(variable(name))).filter(value -> !value.isEmpty());
  }

  static String variable(String name) {
    return PREFIX + name.toUpperCase(Locale.ROOT).replace('-', '_');
  }

  static String name(OptionSpec option) {
    return option.longestName().substring(2);
  }
}
