package org.hedgerow.store.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.ObjIntConsumer;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Switch;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.store.TestDatabase;
import org.hedgerow.store.editions.BankFiller;
import org.hedgerow.store.editions.CurriculumWriter;
import org.hedgerow.store.editions.EditionReader;
import org.hedgerow.store.editions.EditionWriter;
import org.hedgerow.store.editions.FirstEdition;
import org.hedgerow.store.editions.LiveEditions;
import org.hedgerow.store.editions.SeededEdition;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Sets of rules, sequences and sight words, edition by edition. */
class CurriculumIT {
  private static final FirstEdition FIRST = SeededEdition.of("boat", "ship");
  private static final Catalogue CATALOGUE = FIRST.accents().get(0).catalogue();
  private static final ReadingRules NO_CK = ReadingRules.DEFAULT.with(Switch.CK, false);

  private TestDatabase database;
  private LiveEditions editions;

  @BeforeEach
  void fill() {
    database = TestDatabase.open();
    new BankFiller(database.bank()).fill(() -> FIRST, "The first.", () -> {});
    editions = open();
  }

  private LiveEditions open() {
    return new LiveEditions(database.bank(), new EditionReader(database.bank()).first().lexicon());
  }

  @AfterEach
  void drop() {
    editions.close();
    database.close();
  }

  private int publish(ObjIntConsumer<CurriculumWriter> changes) {
    int number =
        database
            .bank()
            .jdbi()
            .inTransaction(
                handle -> {
                  int edition =
                      new EditionWriter(handle, FIRST.accents())
                          .publish(
                              "A test.", OptionalInt.empty(), OptionalInt.empty(), Instant.EPOCH);
                  changes.accept(new CurriculumWriter(handle, CATALOGUE), edition);
                  return edition;
                });
    editions.catchUp(number);
    return number;
  }

  private static List<Sequence> sequences(Lexicon lexicon) {
    return lexicon.plans().sequences("en-US");
  }

  private static Sequence ship() {
    Correspondence sh = CATALOGUE.value("sh", 1).orElseThrow();
    return new Sequence("ship", "“Ship” first\nand last", "", List.of(List.of(sh)));
  }

  @Test
  void readsWhatTheSeedOffers() {
    Curriculum seeded = SeededLexicon.curriculum();
    assertThat(editions.newest().plans().rules()).isEqualTo(seeded.rules());
    assertThat(sequences(editions.newest()))
        .startsWith(seeded.sequences().toArray(Sequence[]::new));
    assertThat(seeded.sequences()).isNotEmpty();
    assertThat(editions.newest().plans().sightWords()).isEqualTo(seeded.sightWords());
    assertThat(seeded.sightWords().names()).startsWith("dolch");
  }

  @Test
  void aChangeIsInItsEditionOnly() {
    List<String> before = editions.newest().plans().rules().names();
    publish((writer, number) -> writer.replace(new RuleSet("ours", "Ours", NO_CK, "x"), number));
    publish((writer, number) -> writer.replace(ship(), number));
    publish(
        (writer, number) -> {
          writer.withdrawRules("ours", number);
          writer.withdrawSequence("ship", number);
        });
    assertThat(editions.at(1).orElseThrow().plans().rules().names()).isEqualTo(before);
    assertThat(editions.at(2).orElseThrow().plans().rules().named("ours").orElseThrow().rules())
        .isEqualTo(NO_CK);
    assertThat(editions.at(3).orElseThrow().plans().rules().names()).contains("ours");
    assertThat(editions.at(3).orElseThrow().plans().sequence("ship", "en-US")).contains(ship());
    assertThat(editions.at(2).orElseThrow().plans().sequence("ship", "en-US")).isEmpty();
    assertThat(editions.newest().plans().rules().names()).isEqualTo(before);
    assertThat(editions.newest().plans().sequence("ship", "en-US")).isEmpty();
    try (LiveEditions other = open()) {
      assertThat(other.at(3).orElseThrow().plans().sequence("ship", "en-US")).contains(ship());
      assertThat(other.newest().plans().rules().names()).isEqualTo(before);
    }
  }

  private static SightWords few(String... words) {
    return new SightWords("few", "“Few” — מילים", List.of(words), "");
  }

  @Test
  void sightWordsAreThoseOfTheirEdition() {
    publish((writer, number) -> writer.replace(few("the", "don't"), number));
    publish((writer, number) -> writer.replace(few("was"), number));
    publish((writer, number) -> writer.withdrawSightWords("few", number));
    assertThat(editions.at(1).orElseThrow().plans().sightWords().named("few")).isEmpty();
    assertThat(editions.at(2).orElseThrow().plans().sightWords().named("few"))
        .contains(few("the", "don't"));
    assertThat(editions.newest().plans().sightWords())
        .isEqualTo(SeededLexicon.curriculum().sightWords());
    try (LiveEditions other = open()) {
      assertThat(other.at(3).orElseThrow().plans().sightWords().named("few")).contains(few("was"));
      assertThat(other.newest().plans().sightWords().named("few")).isEmpty();
    }
  }

  @Test
  void aChangeKeepsItsPlace() {
    List<RuleSet> before = editions.newest().plans().rules().all();
    RuleSet second = before.get(1);
    publish(
        (writer, number) -> {
          writer.replace(new RuleSet(second.name(), "Once", second.rules(), ""), number);
          writer.replace(new RuleSet(second.name(), "Twice", second.rules(), ""), number);
        });
    List<RuleSet> after = editions.newest().plans().rules().all();
    assertThat(after)
        .extracting(RuleSet::name)
        .isEqualTo(before.stream().map(RuleSet::name).toList());
    assertThat(after.get(1).title()).isEqualTo("Twice");
  }

  @Test
  void theUsualRulesStayWhatCountsWhereNothingIsChosen() {
    RuleSet usual = editions.newest().plans().rules().all().get(0);
    assertThatThrownBy(
            () ->
                publish(
                    (writer, number) ->
                        writer.replace(new RuleSet(usual.name(), "x", NO_CK, ""), number)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () -> publish((writer, number) -> writer.withdrawRules(usual.name(), number)))
        .isInstanceOf(IllegalArgumentException.class);
    Sequence computed = new Sequence("ours", "Ours", "", ship().steps());
    assertThatThrownBy(() -> publish((writer, number) -> writer.replace(computed, number)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(new EditionReader(database.bank()).newestNumber()).isEqualTo(1);
  }

  @Test
  void aBankThatIsOlderGetsThemOnce() {
    database
        .bank()
        .jdbi()
        .useHandle(handle -> handle.execute("truncate rule_sets, sequences, sight_words"));
    assertThat(new EditionReader(database.bank()).first().curriculum()).isEqualTo(Curriculum.NONE);
    BankFiller filler = new BankFiller(database.bank());
    filler.addCurriculum(catalogue -> SeededLexicon.curriculum());
    filler.addCurriculum(
        catalogue -> {
          throw new AssertionError("asked for again");
        });
    assertThat(new EditionReader(database.bank()).first().curriculum().rules())
        .isEqualTo(SeededLexicon.curriculum().rules());
  }

  @Test
  void aBankOfAnEarlierBuildGetsSightWordsAndKeepsTheRest() {
    publish((writer, number) -> writer.replace(new RuleSet("ours", "Ours", NO_CK, "x"), number));
    database.bank().jdbi().useHandle(handle -> handle.execute("truncate sight_words"));
    BankFiller filler = new BankFiller(database.bank());
    filler.addCurriculum(
        catalogue -> {
          throw new AssertionError("it has them");
        });
    filler.addSightWords(() -> SeededLexicon.curriculum().sightWords());
    publish((writer, number) -> writer.replace(few("the"), number));
    filler.addSightWords(
        () -> {
          throw new AssertionError("asked for again");
        });
    Curriculum first = new EditionReader(database.bank()).first().curriculum();
    assertThat(first.sightWords()).isEqualTo(SeededLexicon.curriculum().sightWords());
    try (LiveEditions newest = open()) {
      assertThat(newest.newest().plans().rules().names()).contains("ours");
      assertThat(newest.newest().plans().sightWords().names()).startsWith("dolch").endsWith("few");
    }
  }

  @Test
  void anEmptyBankGetsNone() {
    try (TestDatabase empty = TestDatabase.open()) {
      new BankFiller(empty.bank())
          .addCurriculum(
              catalogue -> {
                throw new AssertionError("there is no edition yet");
              });
      new BankFiller(empty.bank())
          .addSightWords(
              () -> {
                throw new AssertionError("there is no edition yet");
              });
      assertThat(new BankFiller(empty.bank()).isEmpty()).isTrue();
    }
  }
}
