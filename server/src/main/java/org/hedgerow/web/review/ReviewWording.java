package org.hedgerow.web.review;

import org.hedgerow.review.ContributionKind;
import org.hedgerow.review.ContributionState;
import org.hedgerow.review.DecisionKind;

/** What the pages call things. */
final class ReviewWording {
  private ReviewWording() {}

  static String of(ContributionKind kind) {
    return switch (kind) {
      case WORD -> "A new word";
      case PRONUNCIATION -> "Another way to say a word";
      case ALIGNMENT -> "Correct letters and sounds";
      case TAGS -> "Other details";
      case PICTURE -> "A picture";
      case SENTENCE -> "A sentence";
      case WITHDRAWAL -> "Something to take out";
    };
  }

  /** What one does with it, in a sentence. */
  static String help(ContributionKind kind) {
    return switch (kind) {
      case WORD -> "Write the word; the bank proposes how it is said and which letters spell what.";
      case PRONUNCIATION ->
          "For your own accent, or a second way in which many people say the word.";
      case ALIGNMENT -> "For a word whose letters the bank matches to the wrong sounds.";
      case TAGS -> "How common it is, whether it can be drawn, whether it suits small children.";
      case PICTURE -> "A drawing or a photograph that shows what the word means.";
      case SENTENCE -> "A short sentence for one phonogram, with that phonogram three times.";
      case WITHDRAWAL -> "A word that shouldn’t be in the bank at all, and why.";
    };
  }

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
