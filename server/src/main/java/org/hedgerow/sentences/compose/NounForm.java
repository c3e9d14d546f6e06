package org.hedgerow.sentences.compose;

/** A noun in one of its numbers, as a word that can be read. */
record NounForm(Noun noun, Piece piece, Form form) {

  enum Form {
    ONE,
    SEVERAL,
    SOME
  }

  Agreement agreement() {
    return form == Form.SEVERAL ? Agreement.OTHER : Agreement.THIRD;
  }
}
