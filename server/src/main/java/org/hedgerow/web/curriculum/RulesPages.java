package org.hedgerow.web.curriculum;

import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.curriculum.RuleSets;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.StaleUpdateException;
import org.hedgerow.reading.Switch;
import org.hedgerow.review.curriculum.CurriculumServices;
import org.hedgerow.review.curriculum.RulesDraft;
import org.hedgerow.web.security.Identity;

/** The sets of reading rules that a centre chooses from. */
final class RulesPages {
  static final String PATH = "/centre/rules";

  private final SetPageSupport desk;
  private final CurriculumServices services;

  RulesPages(SetPageSupport desk, CurriculumServices services) {
    this.desk = desk;
    this.services = services;
  }

  private RuleSets present() {
    return desk.newest().plans().rules();
  }

  private static Optional<RuleSet> named(Lexicon edition, String name) {
    return edition.plans().rules().named(name);
  }

  void list(Context context) {
    List<SetsPage.Row> rows = present().all().stream().map(this::row).toList();
    Optional<String> undo =
        desk.undo(context, PATH, (edition, name) -> named(edition, name).isPresent());
    desk.show(
        context,
        "curriculum/rulesets.jte",
        new SetsPage(desk.token(context), SetPageSupport.done(context), undo, rows));
  }

  private SetsPage.Row row(RuleSet set) {
    boolean usual = set.equals(present().all().get(0));
    return new SetsPage.Row(
        set.name(),
        set.title(),
        set.note(),
        RulesDraft.mark(Optional.of(set)),
        usual ? "Used by default; they can’t be changed." : "");
  }

  void edit(Context context) {
    String name = SetPageSupport.asked(context, "name");
    String model = SetPageSupport.asked(context, "copy");
    Optional<RuleSet> now = present().named(name);
    RulesDraft draft =
        name.isEmpty()
            ? present().named(model).map(RulesPages::copy).orElseGet(this::usual)
            : former(desk.edition(context), name);
    show(context, draft, RulesDraft.mark(now), now.isEmpty(), "", Map.of());
  }

  private static RulesDraft former(Lexicon edition, String name) {
    return RulesDraft.of(
        named(edition, name).orElseThrow(() -> SetPageSupport.missing(name, edition)));
  }

  private RulesDraft usual() {
    return copy(present().all().get(0));
  }

  private static RulesDraft copy(RuleSet model) {
    return new RulesDraft("", "", "", RulesDraft.of(model).switches());
  }

  private void show(
      Context context,
      RulesDraft draft,
      String seen,
      boolean isNew,
      String conflict,
      Map<String, String> errors) {
    List<RulesForm.Choice> choices =
        Arrays.stream(Switch.values())
            .map(
                each ->
                    new RulesForm.Choice(
                        each.label(), each.meaning(), draft.switches().contains(each.label())))
            .toList();
    desk.show(
        context,
        "curriculum/rulesform.jte",
        new RulesForm(
            desk.token(context),
            draft,
            seen,
            isNew,
            desk.former(context, PATH, draft.name()),
            conflict,
            errors,
            choices));
  }

  void save(Context context) {
    RulesDraft draft =
        new RulesDraft(
            SetPageSupport.sent(context, "name"),
            SetPageSupport.sent(context, "title"),
            SetPageSupport.sent(context, "note"),
            context.formParams("switch"));
    String seen = SetPageSupport.sent(context, "seen");
    boolean isNew = seen.isEmpty();
    try {
      int edition =
          services.saveRules().execute(Identity.of(context).actor(), draft, Optional.of(seen));
      desk.goOn(context, PATH, edition, draft.name());
    } catch (RejectedException refused) {
      context.status(400);
      show(context, draft, seen, isNew, "", SetPageSupport.errors(refused));
    } catch (StaleUpdateException late) {
      context.status(412);
      String now = RulesDraft.mark(present().named(draft.name()));
      show(context, draft, isNew ? seen : now, isNew, String.valueOf(late.getMessage()), Map.of());
    }
  }

  void withdraw(Context context) {
    String name = SetPageSupport.sent(context, "name");
    int edition =
        services
            .withdrawRules()
            .execute(
                Identity.of(context).actor(),
                name,
                Optional.of(SetPageSupport.sent(context, "seen")));
    desk.goOn(context, PATH, edition, name);
  }
}
