package org.hedgerow.app;

import java.util.Arrays;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;

/** Answers a command line that can't be understood: one line, and where to read more. */
final class UsageErrorHandler implements IParameterExceptionHandler {
  private final Settings settings;

  UsageErrorHandler(Settings settings) {
    this.settings = settings;
  }

  @Override
  public int handleParseException(ParameterException problem, String[] arguments) {
    CommandLine command = problem.getCommandLine();
    String name = command.getCommandSpec().qualifiedName();
    command.getErr().println("hedgerow: " + problem.getMessage() + source(problem, arguments));
    CommandLine.UnmatchedArgumentException.printSuggestions(problem, command.getErr());
    command.getErr().println("See: " + name + " --help");
    return CommandLine.ExitCode.USAGE;
  }

  /** A value that is not on the command line comes from a place that has to be named. */
  private String source(ParameterException problem, String[] arguments) {
    if (!(problem.getArgSpec() instanceof OptionSpec option) || isNamed(option, arguments)) {
      return "";
    }
    return settings.source(option).map(" (set by %s)"::formatted).orElse("");
  }

  private static boolean isNamed(OptionSpec option, String[] arguments) {
    return Arrays.stream(arguments).anyMatch(text -> text.startsWith(option.longestName()));
  }
}
