package org.hedgerow.store.editions;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.function.ObjIntConsumer;
import java.util.stream.IntStream;
import org.hedgerow.lexicon.EditionLog;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.PublishedEdition;
import org.hedgerow.lexicon.Status;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.Word;
import org.hedgerow.lexicon.WordChange;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.phonics.Aligner;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.SoundReader;
import org.hedgerow.reading.Standard;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.store.TestDatabase;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Editions published one after the other, on a bank with the common words. */
class EditionsIT {
  private static final Duration SOON = Duration.ofSeconds(1);
  private static final FirstEdition COMMON =
      SeededEdition.of(
          SeededLexicon.get().words().stream()
              .filter(word -> word.commonness() >= 4)
              .map(Word::spelling)
              .toArray(String[]::new));

  private static TestDatabase filled;

  private TestDatabase database;
  private LiveEditions editions;

  @BeforeAll
  static void fill() {
    filled = TestDatabase.open();
    new BankFiller(filled.bank()).fill(() -> COMMON, "The first.", () -> {});
  }

  @AfterAll
  static void dropFilled() {
    filled.close();
  }

  @BeforeEach
  void begin() {
    database = filled.copy();
    editions = open();
  }

  @AfterEach
  void drop() {
    editions.close();
    database.close();
  }

  private LiveEditions open() {
    return new LiveEditions(database.bank(), new EditionReader(database.bank()).first().lexicon());
  }

  private int publish(ObjIntConsumer<EditionWriter> changes) {
    int number = publishUnseen(changes);
    editions.catchUp(number);
    return number;
  }

  private int publishUnseen(ObjIntConsumer<EditionWriter> changes) {
    return database
        .bank()
        .jdbi()
        .inTransaction(
            handle -> {
              EditionWriter writer = new EditionWriter(handle, COMMON.accents());
              int edition =
                  writer.publish(
                      "A test.", OptionalInt.empty(), OptionalInt.empty(), Instant.EPOCH);
              changes.accept(writer, edition);
              return edition;
            });
  }

  private Word word(String spelling) {
    return editions.newest().word(spelling).orElseThrow();
  }

  private static Word approved(Word word, Pronunciation... more) {
    List<Pronunciation> said = new ArrayList<>(word.pronunciations());
    said.addAll(List.of(more));
    return new Word(
        word.spelling(), Status.APPROVED, word.commonness(), word.since(), word.tags(), said);
  }

  private Pronunciation said(String spelling, String sounds) {
    Aligner aligner = editions.newest().aligner("en-GB");
    return Pronunciation.aligned(
        aligner, spelling, new SoundReader(aligner.accent()).read(sounds), "", "a teacher", false);
  }

  private Word splosh() {
    return new Word(
        "splosh",
        Status.APPROVED,
        3,
        1,
        List.of(new Tag(Tag.PICTURABLE, "2", "a teacher"), new Tag(Tag.STARTER, "yes", "so")),
        List.of(said("splosh", "s p l ɒ ʃ")));
  }

  /** What an edition answers to every list of a value, to every count and to every word. */
  private static Map<String, Object> answers(Lexicon lexicon) {
    Map<String, Object> answers = new LinkedHashMap<>();
    for (String accent : List.of("en-US", "en-GB")) {
      for (Correspondence value : lexicon.catalogue().correspondences()) {
        WordQuery query = WordQuery.of(accent, Standard.of(value));
        answers.put(accent + value.label(), lexicon.find(query));
        answers.put("count " + accent + value.label(), lexicon.count(query));
      }
    }
    answers.put("words", lexicon.words());
    answers.put("guess", lexicon.guess("sploshing", "en-US"));
    return answers;
  }

  @Test
  void aChangedWordStandsInTheNewEditionOnly() {
    Map<String, Object> before = answers(editions.newest());
    int edition = publish((writer, number) -> writer.replace(approved(word("ship")), number));
    assertThat(edition).isEqualTo(2);
    assertThat(word("ship").status()).isEqualTo(Status.APPROVED);
    assertThat(word("ship").since()).isEqualTo(2);
    assertThat(list("sh").get(0).spelling()).isEqualTo("ship");
    assertThat(answers(editions.at(1).orElseThrow())).isEqualTo(before);
  }

  private List<Word> list(String grapheme) {
    Correspondence value = editions.newest().catalogue().value(grapheme, 1).orElseThrow();
    return editions.newest().find(WordQuery.of("en-GB", Standard.of(value)));
  }

  @Test
  void aNewWordIsInListsFromItsEditionOn() {
    publish((writer, number) -> writer.replace(splosh(), number));
    assertThat(list("sh")).extracting(Word::spelling).contains("splosh");
    assertThat(list("sh")).isSortedAccordingTo(rank());
    assertThat(editions.at(1).orElseThrow().word("splosh")).isEmpty();
  }

  private static Comparator<Word> rank() {
    return Comparator.comparing(Word::status)
        .thenComparing(Word::isStarter, Comparator.reverseOrder())
        .thenComparing(Word::commonness, Comparator.reverseOrder());
  }

  @Test
  void aWithdrawnWordIsGoneFromItsEditionOnAndComesBackByAnother() {
    Word ship = word("ship");
    publish((writer, number) -> assertThat(writer.withdraw("ship", number)).isTrue());
    Map<String, Object> without = answers(editions.newest());
    assertThat(editions.newest().word("ship")).isEmpty();
    publish((writer, number) -> writer.replace(ship, number));
    assertThat(word("ship").since()).isEqualTo(3);
    assertThat(editions.at(2).orElseThrow().word("ship")).isEmpty();
    assertThat(answers(editions.at(2).orElseThrow())).isEqualTo(without);
    assertThat(editions.at(1).orElseThrow().word("ship")).contains(ship);
  }

  @Test
  void whatIsReadAtStartAnswersLikeWhatWasFollowed() {
    publish((writer, number) -> writer.replace(splosh(), number));
    publish(
        (writer, number) -> {
          writer.replace(approved(word("boat"), said("boat", "b ɔː t")), number);
          writer.withdraw("ship", number);
        });
    publish((writer, number) -> writer.withdraw("splosh", number));
    try (LiveEditions other = open()) {
      assertThat(other.newest().edition()).isEqualTo(4);
      assertThat(answers(other.newest())).isEqualTo(answers(editions.newest()));
      for (int edition = 1; edition <= 4; edition++) {
        assertThat(answers(other.at(edition).orElseThrow()))
            .isEqualTo(answers(editions.at(edition).orElseThrow()));
      }
    }
  }

  @Test
  void isShownToThosePreparingBeforeItIsTheNewest() {
    List<String> seen = new ArrayList<>();
    editions.beforeEach(
        next -> {
          throw new IllegalStateException("not prepared for " + next.edition());
        });
    editions.beforeEach(next -> seen.add(editions.newest().edition() + ", then " + next.edition()));
    publish((writer, number) -> writer.replace(approved(word("ship")), number));
    publish((writer, number) -> writer.replace(approved(word("boat")), number));
    assertThat(seen).containsExactly("1, then 2", "2, then 3");
    assertThat(editions.newest().edition()).isEqualTo(3);
  }

  @Test
  void anotherServerAnswersWithItWithinASecond() throws Exception {
    try (LiveEditions other = open()) {
      for (int edition = 2; edition <= 4; edition++) {
        String spelling = List.of("ship", "boat", "rain").get(edition - 2);
        Instant published = Instant.now();
        publishUnseen((writer, number) -> writer.replace(approved(word(spelling)), number));
        while (other.newest().edition() < edition
            && Duration.between(published, Instant.now()).compareTo(SOON) < 0) {
          Thread.sleep(5);
        }
        assertThat(other.newest().edition()).isEqualTo(edition);
        assertThat(other.newest().word(spelling).orElseThrow().since()).isEqualTo(edition);
      }
    }
  }

  @Test
  void anotherServerGetsAnEditionThatIsAskedForByNumber() {
    int edition = publishUnseen((writer, number) -> writer.replace(approved(word("ship")), number));
    assertThat(editions.at(edition).orElseThrow().edition()).isEqualTo(edition);
    assertThat(editions.at(edition + 1)).isEmpty();
    assertThat(editions.at(0)).isEmpty();
    assertThat(editions.at(-1)).isEmpty();
  }

  @Test
  void listensAgainWhenItsConnectionBreaks() throws Exception {
    await(() -> breakListening() == 1);
    publishUnseen((writer, number) -> writer.replace(approved(word("ship")), number));
    await(() -> editions.newest().edition() == 2);
  }

  /** Their answer isn't kept back: the edition is shown as soon as it can be. */
  @Test
  @Timeout(20)
  void whoeverPublishesWaitsOnlySoLongUntilTheEditionIsShown() throws Exception {
    CountDownLatch slow = new CountDownLatch(1);
    editions.beforeEach(next -> await(slow));
    int edition = publishUnseen((writer, number) -> writer.replace(approved(word("ship")), number));

    editions.catchUp(edition);
    assertThat(editions.newest().edition()).isLessThan(edition);

    slow.countDown();
    await(() -> editions.newest().edition() == edition);
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException interruption) {
      Thread.currentThread().interrupt();
    }
  }

  private int breakListening() {
    return database
        .bank()
        .jdbi()
        .withHandle(
            handle ->
                handle
                    .createQuery(
                        "select count(pg_terminate_backend(pid)) from pg_stat_activity"
                            + " where datname = current_database() and query like 'listen%'")
                    .mapTo(Integer.class)
                    .one());
  }

  private static void await(BooleanSupplier condition) throws InterruptedException {
    Instant limit = Instant.now().plusSeconds(10);
    while (!condition.getAsBoolean()) {
      assertThat(Instant.now()).isBefore(limit);
      Thread.sleep(20);
    }
  }

  @Test
  void readsWhatATransactionItselfChanged() {
    publish(
        (writer, number) -> {
          writer.replace(approved(word("ship")), number);
          Word changed = writer.current("ship").orElseThrow();
          assertThat(changed.status()).isEqualTo(Status.APPROVED);
          writer.replace(approved(changed, said("ship", "ʃ iː p")), number);
          assertThat(writer.current("ship").orElseThrow().pronunciations())
              .hasSize(changed.pronunciations().size() + 1);
          assertThat(writer.at("ship", 1)).isEqualTo(Optional.of(word("ship")));
          writer.replace(splosh(), number);
          assertThat(writer.withdraw("splosh", number)).isFalse();
          assertThat(writer.current("splosh")).isEmpty();
          assertThat(writer.withdraw("sploshing", number)).isFalse();
        });
    assertThat(word("ship").pronunciations()).anyMatch(said -> said.source().equals("a teacher"));
    assertThat(editions.newest().word("splosh")).isEmpty();
  }

  @Test
  void recordsWhatEachEditionChanged() {
    int mary = account("mary", "Mary Bloggs");
    Word ship = word("ship");
    publish((writer, number) -> writer.replace(List.of(approved(ship), splosh()), number));
    database
        .bank()
        .jdbi()
        .useTransaction(
            handle -> {
              EditionWriter writer = new EditionWriter(handle, COMMON.accents());
              int number =
                  writer.publish(
                      "Away with them.", OptionalInt.of(mary), OptionalInt.empty(), Instant.EPOCH);
              writer.withdraw("ship", number);
              writer.withdraw("splosh", number);
            });
    EditionLog log = editions.log();
    assertThat(log.before(Integer.MAX_VALUE, 2))
        .extracting(PublishedEdition::number)
        .containsExactly(3, 2);
    PublishedEdition third = log.edition(3).orElseThrow();
    assertThat(third.by()).contains("Mary Bloggs");
    assertThat(third.summary()).isEqualTo("Away with them.");
    assertThat(third.contribution()).isEmpty();
    assertThat(third.words()).isEqualTo(2);
    assertThat(third.at()).isEqualTo(Instant.EPOCH);
    assertThat(log.edition(4)).isEmpty();
    assertThat(log.edition(1).orElseThrow().words()).isZero();
    assertThat(log.changes(1)).isEmpty();
    assertThat(log.changes(2)).extracting(WordChange::spelling).containsExactly("ship", "splosh");
    assertThat(log.changes(2).get(0).before()).contains(ship);
    assertThat(log.changes(2).get(1).before()).isEmpty();
    assertThat(log.changes(3)).allMatch(change -> change.after().isEmpty());
    assertThat(log.ofWord("ship", 3)).extracting(PublishedEdition::number).containsExactly(3, 2);
    assertThat(log.ofWord("ship", 2)).extracting(PublishedEdition::number).containsExactly(2);
    assertThat(log.ofWord("boat", 3)).isEmpty();
  }

  private int account(String name, String displayName) {
    return database
        .bank()
        .jdbi()
        .withHandle(
            handle ->
                handle
                    .createQuery(
                        "insert into accounts (name, display_name, role, password_hash, since)"
                            + " values (?, ?, 'reviewer', '$argon2id$x', now()) returning id")
                    .bind(0, name)
                    .bind(1, displayName)
                    .mapTo(Integer.class)
                    .one());
  }

  @Test
  void anEditionThatIsNotCommittedLeavesNothing() {
    try {
      publish(
          (writer, number) -> {
            writer.withdraw("ship", number);
            throw new IllegalStateException("pulled plug");
          });
    } catch (IllegalStateException expected) {
      assertThat(expected).hasMessage("pulled plug");
    }
    assertThat(new EditionReader(database.bank()).newestNumber()).isEqualTo(1);
    assertThat(publish((writer, number) -> writer.withdraw("boat", number))).isEqualTo(2);
    assertThat(editions.newest().word("ship")).isPresent();
  }

  @Test
  void editionsOfManyWritersHaveNoGapsAndLoseNothing() {
    List<String> spellings =
        COMMON.words().stream()
            .map(Word::spelling)
            .filter(each -> each.length() == 4)
            .limit(40)
            .toList();
    List<CompletableFuture<Integer>> writers =
        spellings.stream()
            .map(
                spelling ->
                    CompletableFuture.supplyAsync(
                        () ->
                            publish(
                                (writer, number) ->
                                    writer.replace(
                                        approved(writer.current(spelling).orElseThrow()), number))))
            .toList();
    assertThat(writers.stream().map(CompletableFuture::join).toList())
        .containsExactlyInAnyOrderElementsOf(IntStream.rangeClosed(2, 41).boxed().toList());
    assertThat(spellings).allMatch(spelling -> word(spelling).status() == Status.APPROVED);
    assertThat(editions.newest().edition()).isEqualTo(41);
  }

  /** Each edition holds one of two words; both or none would be half an edition. */
  @Test
  void readersNeverSeeHalfAnEdition() {
    Word ship = word("ship");
    Word boat = word("boat");
    publish((writer, number) -> writer.withdraw("boat", number));
    AtomicBoolean done = new AtomicBoolean();
    CompletableFuture<Integer> reader =
        CompletableFuture.supplyAsync(
            () -> {
              int seen = 0;
              while (!done.get()) {
                Lexicon lexicon = editions.newest();
                boolean holdsShip = lexicon.word("ship").isPresent();
                assertThat(lexicon.word("boat").isPresent()).isNotEqualTo(holdsShip);
                seen = Math.max(seen, lexicon.edition());
              }
              return seen;
            });
    for (int i = 0; i < 10; i++) {
      publish(
          (writer, number) -> {
            writer.withdraw(number % 2 == 0 ? "boat" : "ship", number);
            writer.replace(number % 2 == 0 ? ship : boat, number);
          });
    }
    done.set(true);
    assertThat(reader.join()).isGreaterThan(1);
  }
}
