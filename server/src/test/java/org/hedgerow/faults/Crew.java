package org.hedgerow.faults;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.hedgerow.fuzz.TestTokens;
import org.hedgerow.operations.Role;
import org.hedgerow.store.BankDatabase;

/**
 * Whose tokens the scenarios use.
 *
 * @param ofRoles one of every role, by its name, for hostile requests
 */
record Crew(List<String> contributors, List<String> reviewers, Map<String, String> ofRoles) {
  /** Enough that the pace of submissions that one account may keep slows nobody down. */
  private static final int CONTRIBUTORS = 12;

  private static final int REVIEWERS = 3;

  /** Makes their accounts in the bank of a data folder. */
  static Crew join(Path data) {
    Map<String, String> ofRoles = new HashMap<>(TestTokens.ofEveryRole(data));
    try (BankDatabase bank = BankDatabase.embeddedOrRunning(data)) {
      TestTokens tokens = TestTokens.in(bank);
      return new Crew(
          join(tokens, Role.CONTRIBUTOR, CONTRIBUTORS),
          join(tokens, Role.REVIEWER, REVIEWERS),
          ofRoles);
    }
  }

  private static List<String> join(TestTokens tokens, Role role, int count) {
    return new ArrayList<>(
        IntStream.range(0, count).mapToObj(i -> tokens.join(role.label() + i, role)).toList());
  }

  String reviewer() {
    return reviewers.get(0);
  }
}
