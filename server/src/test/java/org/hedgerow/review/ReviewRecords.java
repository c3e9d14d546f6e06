package org.hedgerow.review;

import java.util.List;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Role;

/** Where contributions are kept, as tests look at it: a bank with few words, and nobody yet. */
public interface ReviewRecords {
  /** The words that the bank holds in its first edition. */
  List<String> WORDS = List.of("ship", "rain", "wool", "cat", "moon");

  ReviewRepository book();

  /** A new one. */
  Account account(String name, String displayName, Role role);

  int newestEdition();

  /** The record of what was done, the oldest first, as in {@code nora contribution.begun}. */
  List<String> audit();

  /** All that the record holds, as one text. */
  String auditInFull();
}
