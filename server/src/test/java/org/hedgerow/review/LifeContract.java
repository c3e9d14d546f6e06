package org.hedgerow.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Bytes;
import org.hedgerow.lexicon.Status;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Accents;
import org.hedgerow.phonics.Sound;
import org.hedgerow.pictures.CleanPicture;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The whole life of a contribution of each kind, from the draft to its undoing. */
public abstract class LifeContract extends ReviewContract {
  private static final CleanPicture DOT =
      new CleanPicture("image/png", Bytes.of(new byte[] {1, 2, 3}), 2, 1);
  private static final String RAIN = "Rain on the moat.";

  /**
   * A contribution of one kind.
   *
   * @param first what is proposed at first
   * @param better what is proposed after it was returned
   * @param done whether the bank is as the better one wants it
   */
  record Life(Proposal first, Proposal better, Predicate<BankStore> done) {
    /** With the picture that was sent, where a picture is proposed. */
    Life with(Upload sent) {
      return new Life(showing(first, sent), showing(better, sent), done);
    }

    private static Proposal showing(Proposal proposal, Upload sent) {
      return proposal instanceof NewPicture picture
          ? new NewPicture(
              picture.spelling(),
              sent.id(),
              picture.title(),
              picture.author(),
              picture.licence(),
              picture.source())
          : proposal;
    }

    @Override
    public String toString() {
      return better.kind().label();
    }
  }

  static Stream<Life> lives() {
    return Stream.of(
        new Life(
            Proposals.word(0),
            Proposals.word(1),
            bank -> bank.word(Proposals.word(1).spelling()).filter(LifeContract::ours).isPresent()),
        new Life(
            new NewPronunciation("cat", Proposals.saying("en-GB", "k ɑː t"), false),
            new NewPronunciation("cat", Proposals.saying("en-GB", "k ɑː t"), false),
            bank -> said(bank, "cat").anyMatch("k ɑː t"::equals)),
        new Life(wool(), wool(), bank -> bank.word("wool").filter(LifeContract::ours).isPresent()),
        new Life(
            new Retag("ship", Proposals.picturable(1)),
            new Retag("ship", Proposals.picturable(2)),
            bank ->
                bank.word("ship")
                    .filter(LifeContract::ours)
                    .flatMap(each -> each.tag(Tag.PICTURABLE))
                    .filter(tag -> tag.value().equals("2"))
                    .isPresent()),
        new Life(
            picture("Nora"),
            picture("Nora Ilyina"),
            bank ->
                bank.word("moon")
                    .filter(LifeContract::ours)
                    .flatMap(each -> each.tag(Tag.PICTURE))
                    .filter(tag -> tag.value().matches("contribution-\\d+"))
                    .isPresent()),
        new Life(
            new NewSentence("Rain.", "oa", 1, List.of("en-US")),
            new NewSentence(RAIN, "oa", 1, List.of("en-US", "en-GB")),
            bank -> bank.sentence(RAIN).filter(each -> each.accents().size() == 2).isPresent()),
        new Life(
            new Withdrawal("ship", "", "It sinks."),
            new Withdrawal("rain", "", "It is wet."),
            bank -> bank.word("rain").isEmpty()));
  }

  private static boolean ours(Word word) {
    return word.status() == Status.APPROVED;
  }

  private static Stream<String> said(BankStore bank, String spelling) {
    return bank.word(spelling).stream()
        .flatMap(word -> word.pronunciations().stream())
        .map(each -> Sound.spaced(each.sounds()));
  }

  private static Realignment wool() {
    return new Realignment(
        "wool",
        new ProposedPronunciation(
            "en-GB",
            "w ʊ l",
            List.of(
                new LetterGroup(List.of(0), "w"),
                new LetterGroup(List.of(1, 2), "ʊ"),
                new LetterGroup(List.of(3), "l"))));
  }

  private static NewPicture picture(String author) {
    return new NewPicture("moon", "", "A moon", author, "CC-BY-4.0", "");
  }

  private static Word bare(Word word) {
    return word.since(0).among(Accents.UNKNOWN);
  }

  private boolean holds(Predicate<BankStore> condition) {
    return records.book().inTransaction(unit -> condition.test(unit.bank()));
  }

  @ParameterizedTest
  @MethodSource("lives")
  void fromTheDraftToTheBankAndOutOfItAgain(Life planned) {
    Life life = planned.with(services.sendPicture().execute(nora, DOT));
    Optional<Word> before = word(life.better().subject());
    Contribution draft = draft(nora, life.first());
    int id = draft.id();
    services.submit().execute(nora, id, 1);
    services.decide().execute(mei, DecisionRequest.of(DecisionKind.RETURN, id, 1, "Better so."));
    services.revise().execute(nora, id, 1, new Content(life.better(), "", "Better now?"));
    int revision = services.submit().execute(nora, id, present(draft).revision()).revision();
    assertThat(holds(life.done())).isFalse();

    Contribution approved =
        services
            .decide()
            .execute(mei, DecisionRequest.of(DecisionKind.APPROVE, id, revision, "Good."));
    assertThat(approved.state()).isEqualTo(ContributionState.APPROVED);
    assertThat(approved.edition()).hasValue(2);
    assertThat(present(draft).proposal()).isEqualTo(life.better());
    assertThat(records.newestEdition()).isEqualTo(2);
    assertThat(holds(life.done())).isTrue();

    Contribution undone =
        services
            .decide()
            .execute(otto, DecisionRequest.of(DecisionKind.WITHDRAW, id, revision, "A mistake."));
    assertThat(undone.state()).isEqualTo(ContributionState.WITHDRAWN);
    assertThat(records.newestEdition()).isEqualTo(3);
    assertThat(published).containsExactly(2, 3);
    assertThat(holds(life.done())).isFalse();
    assertThat(word(life.better().subject()).map(LifeContract::bare))
        .isEqualTo(before.map(LifeContract::bare));
    assertThat(decisions(draft))
        .extracting(Decision::kind)
        .containsExactly(DecisionKind.RETURN, DecisionKind.APPROVE, DecisionKind.WITHDRAW);
  }
}
