package org.hedgerow.reading;

import java.util.List;

/** A rule about the spans of one pronunciation. */
interface SpanRule {

  FindingCode code();

  /** What the rule finds; empty if nothing. */
  List<Finding> find(Passage passage);

  /** Words in which the rule finds something, and words in which it does not. */
  List<Example> examples();
}
