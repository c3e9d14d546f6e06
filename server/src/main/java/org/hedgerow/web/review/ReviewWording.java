package org.hedgerow.web.review;

import org.hedgerow.review.ContributionState;
import org.hedgerow.review.DecisionKind;

/** What the pages call things. */
final class ReviewWording {
  private ReviewWording() {}

  static String of(ContributionState state) {
    return switch (state) {
      case DRAFT -> "Draft";
      case SUBMITTED -> "Waiting for a reviewer";
      case APPROVED -> "In the bank";
      case RETURNED -> "Returned to you";
      case DECLINED -> "Not taken";
      case WITHDRAWN -> "Taken out again";
    };
  }

  /** Of somebody else's. */
  static String ofOthers(ContributionState state) {
    return state == ContributionState.RETURNED ? "Returned to its author" : of(state);
  }

  static String of(DecisionKind kind) {
    return switch (kind) {
      case APPROVE -> "approved it";
      case RETURN -> "returned it";
      case DECLINE -> "declined it";
      case OVERRULE -> "overruled a finding";
      case WITHDRAW -> "took it out of the bank again";
      case REOPEN -> "opened it again";
    };
  }

  static String commonness(int level) {
    return switch (level) {
      case 5 -> "Everyday: every child says it";
      case 4 -> "Common: most children know it";
      case 3 -> "Fairly common";
      case 2 -> "Known to older children";
      default -> "Rare";
    };
  }

  static String picturable(int level) {
    return switch (level) {
      case 3 -> "Yes: something you can hold or photograph";
      case 2 -> "Yes: it can be drawn";
      case 1 -> "Hardly";
      default -> "No";
    };
  }

  static String partOfSpeech(String label) {
    return switch (label) {
      case "noun" -> "names something (noun)";
      case "verb" -> "says what one does (verb)";
      case "adjective" -> "says what something is like (adjective)";
      case "adverb" -> "says how or when (adverb)";
      default -> "a little word, like “the” or “with”";
    };
  }
}
