package org.hedgerow.web.contract;

import java.util.List;
import java.util.Optional;

/** A method of a listed path. */
public record Operation(Place place) {

  /** The parameters that stand in the path, in the query or in the headers. */
  public List<Parameter> parameters(String in) {
    return place
        .child("parameters")
        .members()
        .filter(parameter -> parameter.child("in").says(in))
        .map(Parameter::new)
        .toList();
  }

  Optional<Parameter> parameter(String in, String name) {
    return parameters(in).stream().filter(each -> each.name().equals(name)).findFirst();
  }

  /** The answer with this status, if the document has one. */
  Optional<Place> answer(int status) {
    return Optional.of(place.child("responses").child(Integer.toString(status)))
        .filter(Place::exists);
  }

  public Optional<Place> requestBody() {
    return Optional.of(place.child("requestBody")).filter(Place::exists);
  }
}
