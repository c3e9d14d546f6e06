package org.hedgerow.accounts;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.hedgerow.operations.IdempotencyStore;

/** Keeps answers in memory, for good; what the work changes is beyond it. */
public final class MemoryAnswers implements IdempotencyStore {
  private record Key(int accountId, String keyHash) {}

  private record Row(String requestHash, Kept answer) {}

  private final Map<Key, Row> rows = new HashMap<>();

  @Override
  public synchronized Outcome once(Request request, Supplier<Kept> work) {
    Key key = new Key(request.accountId(), request.keyHash());
    Row row = rows.get(key);
    if (row == null) {
      rows.put(key, new Row(request.requestHash(), work.get()));
      return new Outcome.Done();
    }
    return row.requestHash().equals(request.requestHash())
        ? new Outcome.Repeated(row.answer())
        : new Outcome.Reused();
  }
}
