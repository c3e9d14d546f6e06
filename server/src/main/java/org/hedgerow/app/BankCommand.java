package org.hedgerow.app;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.hedgerow.store.BankDatabase;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A command that opens the bank's database, does one thing with it and ends. */
abstract class BankCommand implements Callable<Integer> {
  @Mixin private DatabaseOptions database;

  @Spec private CommandSpec spec;

  /** The task as the options describe it; wrong options are reported before anything is opened. */
  abstract BankTask task();

  @Override
  public final Integer call() {
    BankTask task = task();
    try (ShutdownResources resources = ShutdownResources.create()) {
      return task.run(resources.add(open(database)), spec.commandLine().getOut());
    }
  }

  /** Commands that only read may override it with {@link DatabaseOptions#openToRead()}. */
  BankDatabase open(DatabaseOptions options) {
    return options.open();
  }

  final PrintWriter errors() {
    return spec.commandLine().getErr();
  }

  final ParameterException wrongUsage(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
