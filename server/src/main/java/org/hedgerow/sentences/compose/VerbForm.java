package org.hedgerow.sentences.compose;

/** The form of a verb. */
enum VerbForm {
  BASE,
  THIRD,
  PAST,
  ING;

  String of(Verb verb) {
    return switch (this) {
      case BASE -> verb.base();
      case THIRD -> verb.third();
      case PAST -> verb.past();
      case ING -> verb.ing();
    };
  }
}
