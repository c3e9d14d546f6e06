package org.hedgerow.app;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.slf4j.bridge.SLF4JBridgeHandler;
import picocli.CommandLine;

/** The program's entrance. Exit codes: 0 done, 1 failed, 2 wrong usage. */
public final class Hedgerow {
  private Hedgerow() {}

  public static void main(String[] arguments) {
    Terminal.askForThePlainConsole();
    SLF4JBridgeHandler.removeHandlersForRootLogger();
    SLF4JBridgeHandler.install();
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter errors = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    System.exit(run(arguments, System.getenv(), out, errors));
  }

  /** Runs one command and gives its exit code. */
  static int run(
      String[] arguments, Map<String, String> environment, PrintWriter out, PrintWriter errors) {
    CommandLine commands = new CommandLine(new RootCommand()).setOut(out).setErr(errors);
    commands.setCaseInsensitiveEnumValuesAllowed(true);
    commands.registerConverter(int.class, IntegerConverter::read);
    commands.registerConverter(Integer.class, IntegerConverter::read);
    commands.setExecutionExceptionHandler(new CommandErrorHandler());
    try {
      Settings settings = Settings.read(arguments, environment, commands);
      commands.setDefaultValueProvider(settings);
      commands.setParameterExceptionHandler(new UsageErrorHandler(settings));
    } catch (UnusableSettingsException problem) {
      errors.println("hedgerow: " + problem.getMessage());
      return CommandLine.ExitCode.USAGE;
    }
    return execute(commands, arguments, errors);
  }

  private static int execute(CommandLine commands, String[] arguments, PrintWriter errors) {
    try {
      return commands.execute(arguments);
    } catch (OutOfMemoryError exhausted) {
      errors.println("hedgerow: " + MemoryCheck.exhausted());
      return CommandLine.ExitCode.SOFTWARE;
    }
  }
}
