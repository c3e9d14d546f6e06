package org.hedgerow.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.FieldError;
import org.hedgerow.operations.NotAllowedException;
import org.hedgerow.operations.NotFoundException;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.Role;
import org.hedgerow.operations.StaleUpdateException;
import org.hedgerow.reading.Switch;
import org.hedgerow.review.curriculum.ChangeCurriculum;
import org.hedgerow.review.curriculum.CurriculumChange;
import org.hedgerow.review.curriculum.RulesDraft;
import org.hedgerow.review.curriculum.SaveSet;
import org.hedgerow.review.curriculum.SequenceDraft;
import org.hedgerow.review.curriculum.SetKind;
import org.hedgerow.review.curriculum.SightWordsDraft;
import org.hedgerow.review.curriculum.WithdrawSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reading rules, orders of teaching and sight words, changed by administrators. */
public abstract class CurriculumContract extends ReviewContract {
  private static final RulesDraft PLAIN =
      new RulesDraft("plain", "Plain words — כללים", "No doubled letters.", List.of("x"));
  private static final SequenceDraft SHORT =
      new SequenceDraft(
          "brief", "A brief order", "", List.of(List.of("sh", "ch 1"), List.of("oo 2")));

  private static final SightWordsDraft FEW =
      new SightWordsDraft("few", "“Few” — מילים", "", List.of("The", "I", "don’t", "the"));

  private Actor administrator;

  @BeforeEach
  void appoint() {
    administrator = Actor.of(records.account("ada", "Ada", Role.ADMINISTRATOR));
  }

  private int change(Actor actor, CurriculumChange change, Optional<String> seen) {
    return new ChangeCurriculum(services.context()).execute(actor, change, seen);
  }

  private Curriculum present() {
    return records.book().inTransaction(unit -> unit.curriculum().current());
  }

  private RuleSet plain() {
    return present().rules().named("plain").orElseThrow();
  }

  private int savePlain() {
    return change(administrator, new SaveSet<>(SetKind.RULES, PLAIN), Optional.of(""));
  }

  @Test
  void aNewSetOfRulesIsAnEditionWithItsRecord() {
    int before = records.newestEdition();
    assertThat(savePlain()).isEqualTo(before + 1).isEqualTo(records.newestEdition());
    assertThat(plain().title()).isEqualTo("Plain words — כללים");
    assertThat(plain().rules().on()).containsExactly(Switch.X);
    assertThat(published).contains(before + 1);
    assertThat(records.audit()).contains("ada rules.saved");
  }

  @Test
  void aSequenceKeepsItsStepsAndItsPlace() {
    change(administrator, new SaveSet<>(SetKind.SEQUENCES, SHORT), Optional.of(""));
    Sequence saved = present().sequence("brief").orElseThrow();
    assertThat(SequenceDraft.of(saved).stepsInLines()).isEqualTo("sh 1, ch 1\noo 2");
    List<String> names = present().sequences().stream().map(Sequence::name).toList();
    SequenceDraft changed = new SequenceDraft("brief", "Briefer", "", List.of(List.of("sh")));
    String seen = SetKind.SEQUENCES.mark(Optional.of(saved));
    change(administrator, new SaveSet<>(SetKind.SEQUENCES, changed), Optional.of(seen));
    assertThat(present().sequences()).extracting(Sequence::name).isEqualTo(names);
    assertThat(present().sequence("brief").orElseThrow().title()).isEqualTo("Briefer");
  }

  @Test
  void whatIsWithdrawnIsNoLongerToChooseFrom() {
    savePlain();
    change(administrator, new WithdrawSet<>(SetKind.RULES, "plain"), Optional.empty());
    assertThat(present().rules().named("plain")).isEmpty();
    assertThat(records.audit()).contains("ada rules.withdrawn");
    change(administrator, new SaveSet<>(SetKind.SEQUENCES, SHORT), Optional.empty());
    change(administrator, new WithdrawSet<>(SetKind.SEQUENCES, "brief"), Optional.empty());
    assertThat(present().sequence("brief")).isEmpty();
    assertThatThrownBy(
            () ->
                change(
                    administrator, new WithdrawSet<>(SetKind.SEQUENCES, "brief"), Optional.empty()))
        .isInstanceOf(NotFoundException.class);
  }

  private Optional<SightWords> few() {
    return present().sightWords().named("few");
  }

  private int saveFew(String seen) {
    return change(administrator, new SaveSet<>(SetKind.SIGHT_WORDS, FEW), Optional.of(seen));
  }

  @Test
  void sightWordsAreSavedInSmallLettersAndOnce() {
    int before = records.newestEdition();
    assertThat(saveFew("")).isEqualTo(before + 1).isEqualTo(records.newestEdition());
    assertThat(few().orElseThrow().words()).containsExactly("the", "i", "don't");
    assertThat(few().orElseThrow().title()).isEqualTo("“Few” — מילים");
    assertThat(published).contains(before + 1);
    assertThat(records.audit()).contains("ada sight-words.saved");
  }

  @Test
  void sightWordsThatSomebodyChangedMeanwhileStay() {
    saveFew("");
    for (String seen : List.of("", "stale")) {
      assertThatThrownBy(() -> saveFew(seen)).isInstanceOf(StaleUpdateException.class);
      assertThatThrownBy(
              () ->
                  change(
                      administrator,
                      new WithdrawSet<>(SetKind.SIGHT_WORDS, "few"),
                      Optional.of(seen)))
          .isInstanceOf(StaleUpdateException.class);
    }
    saveFew(SetKind.SIGHT_WORDS.mark(few()));
  }

  @Test
  void sightWordsAreWithdrawnButNotThoseThatCountWhereNothingIsChosen() {
    saveFew("");
    change(administrator, new WithdrawSet<>(SetKind.SIGHT_WORDS, "few"), Optional.empty());
    assertThat(few()).isEmpty();
    assertThat(records.audit()).contains("ada sight-words.withdrawn");
    assertThatThrownBy(
            () ->
                change(
                    administrator, new WithdrawSet<>(SetKind.SIGHT_WORDS, "few"), Optional.empty()))
        .isInstanceOf(NotFoundException.class);
    assertThatThrownBy(
            () ->
                change(
                    administrator,
                    new WithdrawSet<>(SetKind.SIGHT_WORDS, "dolch"),
                    Optional.empty()))
        .isInstanceOf(RejectedException.class);
  }

  @Test
  void aCentreChangesTheWordsThatCountWhereNothingIsChosen() {
    List<String> names = present().sightWords().names();
    SightWordsDraft ours = new SightWordsDraft("dolch", "Ours", "", List.of("the", "was"));
    change(administrator, new SaveSet<>(SetKind.SIGHT_WORDS, ours), Optional.empty());
    assertThat(present().sightWords().usualWords()).containsExactlyInAnyOrder("the", "was");
    assertThat(present().sightWords().names()).isEqualTo(names);
  }

  @Test
  void nobodyOverwritesWhatTheyHaveNotSeen() {
    savePlain();
    int edition = records.newestEdition();
    RulesDraft mine = new RulesDraft("plain", "Mine", "", List.of());
    for (String seen : List.of("", "stale")) {
      assertThatThrownBy(
              () -> change(administrator, new SaveSet<>(SetKind.RULES, mine), Optional.of(seen)))
          .isInstanceOf(StaleUpdateException.class);
    }
    assertThat(plain().title()).isEqualTo("Plain words — כללים");
    assertThat(records.newestEdition()).isEqualTo(edition);
  }

  @Test
  void onlyAdministratorsMay() {
    for (Actor other : List.of(Actor.VISITOR, nora, mei)) {
      assertThatThrownBy(() -> change(other, new SaveSet<>(SetKind.RULES, PLAIN), Optional.empty()))
          .isInstanceOf(NotAllowedException.class);
      assertThatThrownBy(
              () -> change(other, new WithdrawSet<>(SetKind.SEQUENCES, "pairs"), Optional.empty()))
          .isInstanceOf(NotAllowedException.class);
      assertThatThrownBy(
              () -> change(other, new SaveSet<>(SetKind.SIGHT_WORDS, FEW), Optional.empty()))
          .isInstanceOf(NotAllowedException.class);
      assertThatThrownBy(
              () ->
                  change(other, new WithdrawSet<>(SetKind.SIGHT_WORDS, "first"), Optional.empty()))
          .isInstanceOf(NotAllowedException.class);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "usual, Ours, x, name",
    "x, Ours, x, name",
    "Plain, Ours, x, name",
    "plain, '', x, title",
    "plain, Ours, loud, switches",
    "ck, Ours, x, name",
  })
  void refusesRulesThatMakeNoSense(String name, String title, String rule, String field) {
    RulesDraft draft = new RulesDraft(name, title, "", List.of(rule));
    assertRefused(
        () -> change(administrator, new SaveSet<>(SetKind.RULES, draft), Optional.empty()), field);
  }

  @ParameterizedTest
  @CsvSource({
    "ours, sh, name",
    "brief, zz, steps",
    "brief, oo 9, steps",
    "brief, SH, steps",
    "brief, <script>, steps",
    "brief, 'ch,ch 1', steps",
    "brief, '', steps",
  })
  void refusesSequencesThatMakeNoSense(String name, String line, String field) {
    SequenceDraft draft = new SequenceDraft(name, "Ours", "", SequenceDraft.steps(line));
    assertRefused(
        () -> change(administrator, new SaveSet<>(SetKind.SEQUENCES, draft), Optional.empty()),
        field);
  }

  @ParameterizedTest
  @CsvSource({
    "none, Ours, the, name",
    "Few, Ours, the, name",
    "few, '', the, title",
    "few, Ours, '', words",
    "few, Ours, x-ray, words",
    "few, Ours, the café, words",
    "few, Ours, <b>the</b>, words",
    "few, Ours, o''clock, words",
    "few, Ours, 4, words",
  })
  void refusesSightWordsThatMakeNoSense(String name, String title, String words, String field) {
    SightWordsDraft draft = new SightWordsDraft(name, title, "", SightWordsDraft.words(words));
    assertRefused(
        () -> change(administrator, new SaveSet<>(SetKind.SIGHT_WORDS, draft), Optional.empty()),
        field);
  }

  @Test
  void refusesMoreSightWordsThanAnybodyTeaches() {
    List<String> many =
        IntStream.range(0, 26 * 40)
            .mapToObj(i -> "abcdefghijklmnopqrstuvwxyz".charAt(i % 26) + "o".repeat(i / 26 % 40))
            .map(String::valueOf)
            .toList();
    SightWordsDraft draft = new SightWordsDraft("few", "Ours", "", many);
    assertThat(draft.words()).hasSize(1_040);
    assertRefused(
        () -> change(administrator, new SaveSet<>(SetKind.SIGHT_WORDS, draft), Optional.empty()),
        "words");
  }

  private void assertRefused(Runnable attempt, String field) {
    int edition = records.newestEdition();
    assertThatThrownBy(attempt::run)
        .isInstanceOfSatisfying(
            RejectedException.class,
            refused -> assertThat(refused.errors()).extracting(FieldError::field).contains(field));
    assertThat(records.newestEdition()).isEqualTo(edition);
    assertThat(records.audit()).noneMatch(line -> line.startsWith("ada"));
  }
}
