package org.hedgerow.accounts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.operations.FieldError;

/**
 * What is to change about the centre.
 *
 * @param name none if it stays
 * @param approvals none if they stay
 */
public record CentreEdit(Optional<String> name, Optional<Integer> approvals) {
  public CentreEdit {
    name = name.map(NameRules::normalDisplayName);
  }

  List<FieldError> errors() {
    List<FieldError> errors = new ArrayList<>();
    name.flatMap(text -> NameRules.shownFault("name", "The name of a centre", text))
        .ifPresent(errors::add);
    approvals
        .filter(number -> number != 1 && number != 2)
        .ifPresent(
            number -> errors.add(new FieldError("approvals", "One or two reviewers approve.")));
    return List.copyOf(errors);
  }
}
