package org.hedgerow.web.curriculum;

import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.reading.Switch;
import org.hedgerow.review.curriculum.ChangeCurriculum;
import org.hedgerow.review.curriculum.RulesDraft;
import org.hedgerow.review.curriculum.SetKind;

/** The sets of reading rules that a centre chooses from. */
final class RulesPages extends SetPages<RuleSet, RulesDraft> {
  RulesPages(SetPageSupport support, ChangeCurriculum change) {
    super(
        SetKind.RULES,
        "/centre/rules",
        "curriculum/rulesets.jte",
        "curriculum/rulesform.jte",
        support,
        change);
  }

  @Override
  List<RuleSet> all(Lexicon edition) {
    return edition.plans().rules().all();
  }

  @Override
  String fixed(RuleSet set, Lexicon edition) {
    return set.equals(usual(edition)) ? "Used by default; they can’t be changed." : "";
  }

  private RuleSet usual(Lexicon edition) {
    return all(edition).get(0);
  }

  @Override
  RulesDraft begin(Optional<RuleSet> model, Lexicon edition) {
    RuleSet copied = model.orElseGet(() -> usual(edition));
    return new RulesDraft("", "", "", RulesDraft.of(copied).switches());
  }

  @Override
  RulesDraft typed(Context context) {
    return new RulesDraft(
        SetPageSupport.sent(context, "name"),
        SetPageSupport.sent(context, "title"),
        SetPageSupport.sent(context, "note"),
        context.formParams("switch"));
  }

  @Override
  Object form(Context context, SetForm<RulesDraft> form, Lexicon newest) {
    List<String> on = form.draft().switches();
    return new RulesForm(
        form,
        Arrays.stream(Switch.values())
            .map(
                each ->
                    new RulesForm.Choice(each.label(), each.meaning(), on.contains(each.label())))
            .toList());
  }
}
