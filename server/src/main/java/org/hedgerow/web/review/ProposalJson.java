package org.hedgerow.web.review;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.hedgerow.review.Content;
import org.hedgerow.review.Proposal;

/** Proposals as they are sent, so that what was read can be changed and sent back. */
final class ProposalJson {
  private final ObjectMapper mapper;

  ProposalJson(ObjectMapper mapper) {
    this.mapper =
        mapper
            .copy()
            .setDefaultPropertyInclusion(
                JsonInclude.Value.construct(
                    JsonInclude.Include.NON_EMPTY, JsonInclude.Include.ALWAYS));
  }

  /** Without what it doesn't say. */
  JsonNode tree(Proposal proposal) {
    return mapper.valueToTree(proposal);
  }

  ObjectNode tree(Content content) {
    ObjectNode tree = mapper.createObjectNode();
    tree.set("proposal", tree(content.proposal()));
    tree.put("wantedFor", content.wantedFor());
    tree.put("note", content.note());
    return tree;
  }
}
