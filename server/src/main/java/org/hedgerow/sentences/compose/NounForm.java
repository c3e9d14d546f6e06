package org.hedgerow.sentences.compose;

/** A noun in one of its numbers, as a word that can be read. */
record NounForm(Noun noun, PhraseWord piece, Form form) {

  enum Form {
    ONE,
    SEVERAL,
    SOME
  }

  /** Whether it names one place: <em>in the barn</em>, not <em>in the barns</em>. */
  boolean isOnePlace() {
    return form != Form.SEVERAL || noun.countability() == Countability.PAIR;
  }

  /** Whether both are told in one breath. */
  boolean goesWith(NounForm other, NounAffinity kinship) {
    return form == other.form
        && !noun.singular().equals(other.noun.singular())
        && kinship.between(noun, other.noun);
  }

  Agreement agreement() {
    return form == Form.SEVERAL ? Agreement.OTHER : Agreement.THIRD;
  }
}
