package org.hedgerow.web.review;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import org.hedgerow.review.Content;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.ContributionQuery;
import org.hedgerow.review.ContributionState;
import org.hedgerow.review.DecisionKind;
import org.hedgerow.review.DecisionRequest;
import org.hedgerow.review.NewWord;
import org.hedgerow.review.ProposedPronunciation;
import org.hedgerow.review.WordLabels;
import org.hedgerow.web.testing.PeopleServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The forms by which people discard, take back and decide on several at once. */
class ReviewPagesTest {
  private PeopleServer server;
  private Actor nour;
  private Actor rosa;
  private PeopleServer.Client asNour;
  private PeopleServer.Client asOmar;
  private PeopleServer.Client asRosa;

  @BeforeEach
  void start() throws Exception {
    server = PeopleServer.start();
    nour = server.person("nour", Role.CONTRIBUTOR);
    server.person("omar", Role.CONTRIBUTOR);
    rosa = server.person("rosa", Role.REVIEWER);
    asNour = server.client().signIn("nour");
    asOmar = server.client().signIn("omar");
    asRosa = server.client().signIn("rosa");
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private Contribution draft(Actor author, String spelling, String sounds) {
    NewWord word =
        new NewWord(
            spelling,
            List.of(new ProposedPronunciation("en-US", sounds, List.of())),
            WordLabels.NONE);
    return server.reviews().write().execute(author, Content.of(word));
  }

  private Contribution submitted(Actor author, String spelling, String sounds) {
    Contribution draft = draft(author, spelling, sounds);
    return server.reviews().submit().execute(author, draft.id(), draft.revision());
  }

  private ContributionState state(Contribution of) {
    return server.reviews().reviews().open(nour, of.id()).contribution().state();
  }

  private boolean isThere(int id) {
    return server
        .reviews()
        .reviews()
        .find(nour, ContributionQuery.seenBy(nour.requireAccount().id(), ContributionQuery.MAX))
        .stream()
        .anyMatch(each -> each.id() == id);
  }

  /** Sends the form of one contribution, as its page has it. */
  private static HttpResponse<String> send(
      PeopleServer.Client client, Contribution seen, String what, int revision) throws Exception {
    return client.form(
        "/contributions",
        "/contributions/%d/%s".formatted(seen.id(), what),
        "revision",
        String.valueOf(revision));
  }

  private static Optional<String> address(HttpResponse<String> answer) {
    return answer.headers().firstValue("Location");
  }

  @Test
  void aDraftIsDiscardedAfterAQuestion() throws Exception {
    Contribution draft = draft(nour, "broam", "b ɹ oʊ m");
    assertThat(asNour.get("/contributions/" + draft.id()).body())
        .contains("formaction=\"/contributions/%d/discard\"".formatted(draft.id()));
    HttpResponse<String> answer = send(asNour, draft, "discard", draft.revision());
    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(address(answer)).contains("/contributions?done=discarded");
    assertThat(isThere(draft.id())).isFalse();
    assertThat(asNour.get("/contributions?done=discarded").body())
        .contains("The draft is gone.")
        .doesNotContain("broam");
    assertThat(asNour.get("/contributions/" + draft.id()).statusCode()).isEqualTo(404);
  }

  @Test
  void aDraftThatWasChangedInAnotherTabIsNotDiscarded() throws Exception {
    Contribution draft = draft(nour, "broam", "b ɹ oʊ m");
    Content more =
        new Content(draft.content().proposal(), draft.content().wantedFor(), "said at home");
    server.reviews().revise().execute(nour, draft.id(), draft.revision(), more);
    HttpResponse<String> late = send(asNour, draft, "discard", draft.revision());
    assertThat(late.statusCode()).isEqualTo(412);
    assertThat(late.body()).contains("changed meanwhile", "said at home");
    assertThat(isThere(draft.id())).isTrue();
  }

  @Test
  void whatWaitsForReviewersIsNotDiscarded() throws Exception {
    Contribution waiting = submitted(nour, "broam", "b ɹ oʊ m");
    HttpResponse<String> answer = send(asNour, waiting, "discard", waiting.revision());
    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(answer.body()).contains("discarded", "Take it back to change it");
    assertThat(state(waiting)).isEqualTo(ContributionState.SUBMITTED);
  }

  @Test
  void nobodyDiscardsOrTakesBackWhatIsAnothers() throws Exception {
    Contribution draft = draft(nour, "broam", "b ɹ oʊ m");
    assertThat(send(asOmar, draft, "discard", draft.revision()).statusCode()).isEqualTo(404);
    Contribution waiting = submitted(nour, "floam", "f l oʊ m");
    assertThat(send(asOmar, waiting, "take-back", waiting.revision()).statusCode()).isEqualTo(403);
    assertThat(isThere(draft.id())).isTrue();
    assertThat(state(waiting)).isEqualTo(ContributionState.SUBMITTED);
  }

  @Test
  void aFormFromElsewhereChangesNothing() throws Exception {
    Contribution draft = draft(nour, "broam", "b ɹ oʊ m");
    String revision = String.valueOf(draft.revision());
    String discard = "/contributions/%d/discard".formatted(draft.id());
    assertThat(asNour.post(discard, "made up", "revision", revision).statusCode()).isEqualTo(403);
    assertThat(isThere(draft.id())).isTrue();
  }

  @Test
  void takenBackItIsADraftAgainAndOutOfTheQueue() throws Exception {
    Contribution waiting = submitted(nour, "broam", "b ɹ oʊ m");
    assertThat(asRosa.get("/review").body()).contains("broam");
    HttpResponse<String> answer = send(asNour, waiting, "take-back", waiting.revision());
    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(address(answer))
        .contains("/contributions/%d?done=taken-back".formatted(waiting.id()));
    assertThat(asNour.get(address(answer).orElseThrow()).body())
        .contains("Taken back. It is a draft again.", "Send to the reviewers");
    assertThat(state(waiting)).isEqualTo(ContributionState.DRAFT);
    assertThat(asRosa.get("/review").body()).doesNotContain("broam");
  }

  @Test
  void whatWasDecidedIsNotTakenBack() throws Exception {
    Contribution waiting = submitted(nour, "broam", "b ɹ oʊ m");
    Contribution approved =
        server
            .reviews()
            .decide()
            .execute(
                rosa,
                DecisionRequest.of(DecisionKind.APPROVE, waiting.id(), waiting.revision(), ""));
    HttpResponse<String> late = send(asNour, approved, "take-back", approved.revision());
    assertThat(late.statusCode()).isEqualTo(409);
    assertThat(late.body()).contains("taken back", "See the word in the bank");
    assertThat(state(waiting)).isEqualTo(ContributionState.APPROVED);
  }

  private HttpResponse<String> decide(String decision, String comment, String... picked)
      throws Exception {
    String[] fields = new String[4 + 2 * picked.length];
    System.arraycopy(new String[] {"decision", decision, "comment", comment}, 0, fields, 0, 4);
    for (int i = 0; i < picked.length; i++) {
      fields[4 + 2 * i] = "pick";
      fields[5 + 2 * i] = picked[i];
    }
    return asRosa.form("/review", "/review", fields);
  }

  private static String pick(Contribution seen) {
    return seen.id() + "-" + seen.revision();
  }

  @Test
  void severalAreApprovedAtOnceAndTheOthersWaitOn() throws Exception {
    Contribution one = submitted(nour, "broam", "b ɹ oʊ m");
    Contribution two = submitted(nour, "floam", "f l oʊ m");
    Contribution left = submitted(nour, "snoam", "s n oʊ m");
    assertThat(asRosa.get("/review").body())
        .contains("value=\"" + pick(one) + "\"", "value=\"" + pick(two) + "\"");
    HttpResponse<String> answer = decide("approve", "", pick(one), pick(two));
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body()).contains("broam", "floam", "In the bank");
    assertThat(List.of(state(one), state(two), state(left)))
        .containsExactly(
            ContributionState.APPROVED, ContributionState.APPROVED, ContributionState.SUBMITTED);
    assertThat(asRosa.get("/words/floam").body()).contains("Approved by experienced teachers");
  }

  /** One that fails keeps no other back, and each says why. */
  @Test
  void amongSeveralEachIsDecidedOnItsOwn() throws Exception {
    Contribution good = submitted(nour, "broam", "b ɹ oʊ m");
    Contribution own = submitted(rosa, "floam", "f l oʊ m");
    Contribution stale = submitted(nour, "snoam", "s n oʊ m");
    HttpResponse<String> answer =
        decide(
            "return",
            "What is it?",
            pick(own),
            stale.id() + "-" + (stale.revision() + 7),
            "999-1",
            "nonsense",
            pick(good));
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body())
        .contains("Returned to its author", "changed meanwhile", "no longer there", "own");
    assertThat(List.of(state(good), state(own), state(stale)))
        .containsExactly(
            ContributionState.RETURNED, ContributionState.SUBMITTED, ContributionState.SUBMITTED);
    assertThat(asNour.get("/contributions/" + good.id()).body()).contains("What is it?");
  }

  @Test
  void severalAreNotReturnedWithoutAWord() throws Exception {
    Contribution one = submitted(nour, "broam", "b ɹ oʊ m");
    Contribution two = submitted(nour, "floam", "f l oʊ m");
    HttpResponse<String> answer = decide("return", "", pick(one), pick(two));
    assertThat(answer.body()).doesNotContain("Returned to its author");
    assertThat(List.of(state(one), state(two)))
        .containsExactly(ContributionState.SUBMITTED, ContributionState.SUBMITTED);
    assertThat(decide("no such decision", "", pick(one)).body()).contains("Say what you decide.");
    assertThat(state(one)).isEqualTo(ContributionState.SUBMITTED);
  }

  @Test
  void aTableThatIsNotInUtf8IsRefusedWithWhatToDo() throws Exception {
    byte[] latin = "spelling,note\nbroam,d\u00e9j\u00e0 vu\n".getBytes(ISO_8859_1);
    HttpResponse<String> refused =
        asNour.upload("/contributions/table", latin, "words", "", "do", "submit");
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body()).contains("isn't in UTF-8", "“CSV UTF-8”");
    byte[] large = new byte[1_000_001];
    Arrays.fill(large, (byte) 'a');
    HttpResponse<String> tooLarge =
        asNour.upload("/contributions/table", large, "words", "", "do", "judge");
    assertThat(tooLarge.statusCode()).isEqualTo(400);
    assertThat(tooLarge.body()).contains("at most a million bytes");
    byte[] good = "\uFEFFspelling,note\nbroam,d\u00e9j\u00e0 vu\n".getBytes(UTF_8);
    assertThat(asNour.upload("/contributions/table", good, "words", "", "do", "judge").statusCode())
        .isEqualTo(200);
  }

  @Test
  void aContributorDecidesOnNothing() throws Exception {
    Contribution waiting = submitted(nour, "broam", "b ɹ oʊ m");
    HttpResponse<String> answer =
        asOmar.form(
            "/contributions",
            "/review",
            "decision",
            "approve",
            "comment",
            "",
            "pick",
            pick(waiting));
    assertThat(answer.statusCode()).isEqualTo(403);
    assertThat(state(waiting)).isEqualTo(ContributionState.SUBMITTED);
  }

  @Test
  void whatFailsIsNotSaidToFit() throws Exception {
    Contribution fits = draft(nour, "broam", "b ɹ oʊ m");
    assertThat(asNour.get("/contributions/" + submit(fits)).body()).contains("It fits: oa");
    Content meantForSh =
        new Content(draft(nour, "ploam", "p l oʊ m").content().proposal(), "sh 1", "");
    Contribution fails = server.reviews().write().execute(nour, meantForSh);
    int id = submit(fails);
    assertThat(asNour.get("/contributions/" + id).body()).doesNotContain("It fits");
    assertThat(asRosa.get("/review/" + id).body()).doesNotContain("It serves");
  }

  private int submit(Contribution draft) {
    return server.reviews().submit().execute(nour, draft.id(), draft.revision()).id();
  }
}
