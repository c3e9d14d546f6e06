package org.hedgerow.app;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** A properties file whose keys are the long names of options, without their hyphens in front. */
final class SettingsFile {
  static final SettingsFile NONE = new SettingsFile(Map.of());

  private final Map<String, String> values;

  private SettingsFile(Map<String, String> values) {
    this.values = Map.copyOf(values);
  }

  static SettingsFile read(String path, CommandLine commands) throws UnusableSettingsException {
    Map<String, String> values = load(path);
    SortedSet<String> unknown = new TreeSet<>(values.keySet());
    SortedSet<String> known = names(commands);
    unknown.removeAll(known);
    if (!unknown.isEmpty()) {
      throw new UnusableSettingsException(
          "%s sets %s, which is no setting. Settings are: %s."
              .formatted(path, String.join(", ", unknown), String.join(", ", known)));
    }
    return new SettingsFile(values);
  }

  Optional<String> value(String name) {
    return Optional.ofNullable(values.get(name));
  }

  private static Map<String, String> load(String path) throws UnusableSettingsException {
    Properties properties = new Properties();
    try (Reader reader = Files.newBufferedReader(Path.of(path), StandardCharsets.UTF_8)) {
      properties.load(reader);
    } catch (IOException | IllegalArgumentException problem) {
      throw new UnusableSettingsException(
          "The settings file %s can't be read: %s.".formatted(path, reason(problem)));
    }
    Map<String, String> values = new TreeMap<>();
    properties
        .stringPropertyNames()
        .forEach(name -> values.put(name, properties.getProperty(name)));
    return values;
  }

  private static String reason(Exception problem) {
    if (problem instanceof NoSuchFileException) {
      return "there is no such file";
    }
    if (problem instanceof InvalidPathException) {
      return "that is no file name";
    }
    return String.valueOf(problem.getMessage());
  }

  private static SortedSet<String> names(CommandLine commands) {
    SortedSet<String> names = new TreeSet<>();
    for (CommandLine command : commands.getSubcommands().values()) {
      for (OptionSpec option : command.getCommandSpec().options()) {
        if (!option.usageHelp() && !option.versionHelp()) {
          names.add(Settings.name(option));
        }
      }
    }
    names.remove("config");
    return names;
  }
}
