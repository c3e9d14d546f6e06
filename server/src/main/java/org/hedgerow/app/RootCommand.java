package org.hedgerow.app;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The word before all commands, which does nothing by itself. */
@Command(
    name = "hedgerow",
    description = "A shared word bank for people who make early-reading material about phonograms.",
    mixinStandardHelpOptions = true,
    scope = ScopeType.INHERIT,
    versionProvider = Version.class,
    subcommands = {
      ServeCommand.class,
      MigrateCommand.class,
      SeedCommand.class,
      ListCommand.class,
      CheckCommand.class,
      CheckSeedCommand.class,
      AccountCommand.class,
      ExportCommand.class,
      ImportCommand.class,
      VersionCommand.class
    },
    footer = {
      "",
      "Every option can also be set in the environment (--database-url as "
          + "HEDGEROW_DATABASE_URL) or in the file given by --config (database-url=...). An "
          + "option goes before the environment, the environment before the file."
    })
final class RootCommand implements Runnable {
  @Option(
      names = "--config",
      paramLabel = "FILE",
      scope = ScopeType.INHERIT,
      description = "A properties file with settings.")
  @Nullable Path config;

  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Say which command to run.");
  }
}
