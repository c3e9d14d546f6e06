package org.hedgerow.sentences.compose;

/**
 * How sentences are filled, as probabilities. The figures were found by reading what comes out.
 *
 * @param pronoun that a pronoun stands for people
 * @param paired that two nouns stand where one would do
 * @param described that a noun gets an adjective
 * @param describedByTarget the same where an adjective holds the phonogram
 * @param kinship which two nouns may stand where one would do
 * @param tries when to stop where words are few
 * @param joined how many lots of the draw two joined statements have
 */
record Style(
    double pronoun,
    double paired,
    double described,
    double describedByTarget,
    NounAffinity kinship,
    int joined,
    int tries) {

  /** Where there is nothing better. */
  static final Style LAST = new Style(0.3, 0.4, 0.1, 0.8, NounAffinity.DISTANT, 6, 90_000);

  private static final double PRONOUN_WITH_TARGET = 0.7;

  /** As people write for children. */
  static final Style PLAIN = new Style(0.3, 0.04, 0.06, 0.3, NounAffinity.CLOSE, 0, 15_000);

  /** Where few words hold the phonogram, and each sentence needs three of them. */
  static final Style DENSE = new Style(0.3, 0.3, 0.06, 0.7, NounAffinity.CLOSE, 0, 15_000);

  /** That one of these pronouns stands for people: oftener where some hold the phonogram. */
  double pronoun(WordPool<NounPhrase> pronouns) {
    return pronouns.targets().isEmpty() ? pronoun : PRONOUN_WITH_TARGET;
  }
}
