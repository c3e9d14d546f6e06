package org.hedgerow.review.curriculum;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.curriculum.NamedSet;
import org.hedgerow.operations.FieldError;
import org.hedgerow.operations.NotFoundException;
import org.hedgerow.phonics.Catalogue;

/** Takes a named set out of the choice; older editions keep it. */
public record WithdrawSet<T extends NamedSet>(SetKind<T, ?> kind, String name)
    implements CurriculumChange {
  @Override
  public List<FieldError> errors(Catalogue catalogue) {
    return List.of();
  }

  @Override
  public Outcome apply(Curriculum present, Catalogue catalogue) {
    kind.requireAllowed(present, name, true);
    T set =
        kind.find().apply(present, name).orElseThrow(() -> new NotFoundException(kind.missing()));
    return new Outcome(
        kind.without().apply(present, name),
        kind.mark(Optional.of(set)),
        kind.action("withdrawn"),
        kind.noun() + " " + name,
        "%s withdrawn: %s.".formatted(kind.heading(), set.title()),
        kind.record(set),
        Map.of());
  }
}
