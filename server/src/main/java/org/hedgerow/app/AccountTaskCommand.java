package org.hedgerow.app;

import java.io.PrintWriter;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.operations.NotFoundException;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.store.BankDatabase;

/** A command about accounts. */
abstract class AccountTaskCommand extends BankCommand {

  abstract void run(AccountServices accounts, PrintWriter out);

  @Override
  final BankDatabase open(DatabaseOptions options) {
    return options.openToRead();
  }

  @Override
  final BankTask task() {
    return (bank, out) -> {
      try {
        run(Wiring.accounts(bank), out);
        return 0;
      } catch (RejectedException | NotFoundException refused) {
        throw new CommandFailedException(String.valueOf(refused.getMessage()));
      }
    };
  }
}
