package org.hedgerow.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the program. */
final class Version implements IVersionProvider {
  static String current() {
    Properties properties = new Properties();
    try (InputStream file = Version.class.getResourceAsStream("version.properties")) {
      properties.load(file);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
    return properties.getProperty("version", "unknown");
  }

  @Override
  public String[] getVersion() {
    return new String[] {"Hedgerow " + current()};
  }
}
