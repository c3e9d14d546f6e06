package org.hedgerow.reading;

import java.util.List;

/** All rules about spans, in the order in which a teacher wants to hear of them. */
final class SpanRules {

  static final List<SpanRule> ALL =
      List.of(
          new NoTarget(),
          new OtherValue(),
          new SecondPhonogram(),
          new RepeatedTarget(),
          new SilentLetter(),
          new IrregularSpelling(),
          new ReducedVowel(),
          new FalsePair(),
          new SmallMargin());

  private SpanRules() {}
}
