package org.hedgerow.web.people;

import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.accounts.Centre;
import org.hedgerow.accounts.CentreEdit;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.StaleUpdateException;

/** What a centre chooses for itself, for administrators. */
final class CentrePages {
  private static final String NAME = "name";
  private static final String APPROVALS = "approvals";

  private final AccountPageSupport desk;

  CentrePages(AccountPageSupport desk) {
    this.desk = desk;
  }

  void show(Context context) {
    boolean changed = "changed".equals(context.queryParam("done"));
    Centre centre = desk.accounts().centre().read();
    show(
        context,
        Form.fresh(desk.token(context)),
        centre,
        changed ? "The centre is changed." : "",
        "");
  }

  private void show(Context context, Form form, Centre centre, String done, String conflict) {
    desk.show(
        context,
        "people/centre.jte",
        new CentrePage(
            form,
            form.typed().getOrDefault(NAME, centre.name().orElse("")),
            form.typed().getOrDefault(APPROVALS, Integer.toString(centre.approvals())),
            centre.version(),
            done,
            conflict));
  }

  void change(Context context) {
    String name = Form.shortened(context, NAME);
    Map<String, String> typed = Map.of(NAME, name, APPROVALS, Form.shortened(context, APPROVALS));
    CentreEdit edit =
        new CentreEdit(Optional.of(name), Optional.of(Form.number(context, APPROVALS)));
    int version = Form.number(context, "version");
    try {
      desk.centre().change(desk.actor(context), edit, centre -> centre.version() == version);
      desk.goOn(context, "/centre?done=changed");
    } catch (RejectedException refused) {
      context.status(400);
      Centre centre = desk.accounts().centre().read();
      show(context, Form.refused(desk.token(context), typed, refused), centre, "", "");
    } catch (StaleUpdateException late) {
      context.status(412);
      Form form = new Form(desk.token(context), typed, Map.of());
      String conflict = late.getMessage() + " Send yours again if it shall be so all the same.";
      show(context, form, desk.accounts().centre().read(), "", conflict);
    }
  }
}
