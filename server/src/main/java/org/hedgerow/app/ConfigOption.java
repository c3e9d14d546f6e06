package org.hedgerow.app;

import java.util.Optional;

/** Finds the settings file on the command line, before anything else there is understood. */
final class ConfigOption {
  private static final String NAME = "--config";

  private ConfigOption() {}

  static Optional<String> in(String[] arguments) {
    for (int i = 0; i < arguments.length && !arguments[i].equals("--"); i++) {
      if (arguments[i].startsWith(NAME + "=")) {
        return Optional.of(arguments[i].substring(NAME.length() + 1));
      }
      if (arguments[i].equals(NAME) && i + 1 < arguments.length) {
        return Optional.of(arguments[i + 1]);
      }
    }
    return Optional.empty();
  }
}
