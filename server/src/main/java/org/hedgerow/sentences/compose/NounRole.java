package org.hedgerow.sentences.compose;

/** Where a noun stands, which decides what it is introduced by. */
enum NounRole {
  SUBJECT,
  OBJECT,
  PLACE
}
