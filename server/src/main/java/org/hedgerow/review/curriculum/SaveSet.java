package org.hedgerow.review.curriculum;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.curriculum.NamedSet;
import org.hedgerow.operations.FieldError;
import org.hedgerow.phonics.Catalogue;

/** Makes a named set, or changes the one of its name. */
public record SaveSet<T extends NamedSet, D extends SetDraft<T>>(SetKind<T, D> kind, D draft)
    implements CurriculumChange {
  @Override
  public List<FieldError> errors(Catalogue catalogue) {
    return draft.errors(catalogue);
  }

  @Override
  public Outcome apply(Curriculum present, Catalogue catalogue) {
    T set = draft.toSet(catalogue);
    kind.requireAllowed(present, set.name(), false);
    Optional<T> before = kind.find().apply(present, set.name());
    return new Outcome(
        kind.with().apply(present, set),
        kind.mark(before),
        kind.action("saved"),
        kind.noun() + " " + set.name(),
        "%s: %s.".formatted(kind.heading(), set.title()),
        before.map(kind::record).orElse(Map.of()),
        kind.record(set));
  }
}
