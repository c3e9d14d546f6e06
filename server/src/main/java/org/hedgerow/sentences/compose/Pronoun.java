package org.hedgerow.sentences.compose;

import java.util.List;

/** Words that stand for people. */
record Pronoun(String subject, String object, Agreement agreement) {

  static final List<Pronoun> ALL =
      List.of(
          new Pronoun("I", "me", Agreement.FIRST),
          new Pronoun("you", "you", Agreement.OTHER),
          new Pronoun("he", "him", Agreement.THIRD),
          new Pronoun("she", "her", Agreement.THIRD),
          new Pronoun("we", "us", Agreement.OTHER),
          new Pronoun("they", "them", Agreement.OTHER));
}
