package org.hedgerow.web.curriculum;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntSupplier;
import org.hedgerow.operations.StaleUpdateException;
import org.hedgerow.web.http.FieldDifference;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;

/** What is answered to those who change a set that has a name. */
record SetAnswers(ObjectMapper mapper) {
  /** Which edition has it. */
  record View(int edition, String name) {}

  /**
   * @param verb gives the number of the edition
   * @param tooLate what to say where somebody else was faster
   */
  void send(
      Context context, IntSupplier verb, Function<StaleUpdateException, ProblemException> tooLate) {
    try {
      int edition = verb.getAsInt();
      context
          .header(Header.CACHE_CONTROL, "no-store")
          .header(Header.ETAG, SeenEdition.entityTag(edition))
          .json(new View(edition, context.pathParam("name")));
    } catch (StaleUpdateException late) {
      throw tooLate.apply(late);
    }
  }

  /**
   * @param yours what was sent, or seen where it was to go
   * @param present as it is now, if it is there
   */
  ProblemException late(StaleUpdateException late, Optional<?> yours, Optional<?> present) {
    Map<String, Object> members = new LinkedHashMap<>();
    present.ifPresent(now -> members.put("present", now));
    members.put("changed", FieldDifference.between(tree(yours), tree(present)));
    return Problem.of(
            ProblemType.CHANGED_MEANWHILE,
            late.getMessage()
                + " Look at what differs, then send yours with the ETag of the newest edition.")
        .with(members)
        .exception();
  }

  private JsonNode tree(Optional<?> edit) {
    return edit.<JsonNode>map(mapper::valueToTree).orElseGet(mapper::createObjectNode);
  }
}
