package org.hedgerow.app;

import java.util.Optional;
import org.hedgerow.operations.UnavailableException;
import org.hedgerow.store.archive.UnusableArchiveException;
import org.hedgerow.store.database.DamagedData;
import org.hedgerow.store.database.DatabaseUnavailableException;
import org.hedgerow.web.ListeningException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Turns a failed command into one line and exit code 1. */
final class CommandErrorHandler implements IExecutionExceptionHandler {
  private static final Logger LOG = LoggerFactory.getLogger(CommandErrorHandler.class);

  @Override
  public int handleExecutionException(Exception failure, CommandLine command, ParseResult arguments)
      throws Exception {
    if (failure instanceof ParameterException wrongUsage) {
      return command.getParameterExceptionHandler().handleParseException(wrongUsage, new String[0]);
    }
    Optional<String> damage = DamagedData.in(failure);
    if (MemoryCheck.isExhaustedIn(failure)) {
      command.getErr().println("hedgerow: " + MemoryCheck.exhausted());
    } else if (damage.isPresent()) {
      command.getErr().println("hedgerow: " + damage.get());
    } else if (isForPeople(failure)) {
      command.getErr().println("hedgerow: " + failure.getMessage());
    } else {
      LOG.error("A fault in the program", failure);
    }
    return CommandLine.ExitCode.SOFTWARE;
  }

  private static boolean isForPeople(Exception failure) {
    return failure instanceof DatabaseUnavailableException
        || failure instanceof UnavailableException
        || failure instanceof UnusableArchiveException
        || failure instanceof ListeningException
        || failure instanceof CommandFailedException;
  }
}
