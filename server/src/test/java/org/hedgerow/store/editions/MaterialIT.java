package org.hedgerow.store.editions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.ObjIntConsumer;
import org.hedgerow.lexicon.Bytes;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Need;
import org.hedgerow.lexicon.Needs;
import org.hedgerow.lexicon.Picture;
import org.hedgerow.lexicon.Pictures;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.operations.UnavailableException;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.store.TestDatabase;
import org.jdbi.v3.core.Handle;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Pictures and sentences, edition by edition. */
class MaterialIT {
  private static final FirstEdition FIRST = SeededEdition.of("boat", "ship", "cat", "the");
  private static final Catalogue CATALOGUE = FIRST.accents().get(0).catalogue();
  private static final Correspondence SH = CATALOGUE.value("sh", 1).orElseThrow();
  private static final Pictures BUNDLED = SeededLexicon.get().pictures();
  private static final Picture SHIP =
      new Picture(
          "contributed-ship",
          "ship",
          "Mary Bloggs",
          "CC BY 4.0",
          "https://creativecommons.org/licenses/by/4.0/",
          "her own",
          "0123456789ab",
          Picture.PNG,
          Bytes.of(new byte[] {0, -1, 92, 120, 10, 0}));
  private static final Sentence FISH = new Sentence("The ship…", SH, List.of("en-GB", "en-US"));

  private TestDatabase database;
  private LiveEditions editions;

  @BeforeEach
  void fill() {
    database = TestDatabase.open();
    new BankFiller(database.bank()).fill(() -> FIRST, "The first.", () -> {});
    editions = open();
  }

  private LiveEditions open() {
    return new LiveEditions(
        database.bank(), new EditionReader(database.bank()).first().lexicon(BUNDLED));
  }

  @AfterEach
  void drop() {
    editions.close();
    database.close();
  }

  private void publish(ObjIntConsumer<Handle> changes) {
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
                  changes.accept(handle, edition);
                  return edition;
                });
    editions.catchUp(number);
  }

  private Lexicon at(int edition) {
    return editions.at(edition).orElseThrow();
  }

  @Test
  void aPictureIsThereFromItsEditionOnBesideTheBundledOnes() {
    publish((handle, number) -> new PictureWriter(handle).add(SHIP, number));
    publish((handle, number) -> {});
    assertIsShip(editions.newest());
    assertThat(at(2).pictures().count()).isEqualTo(BUNDLED.count() + 1);
    assertThat(at(1).pictures().picture(SHIP.id())).isEmpty();
    try (LiveEditions other = open()) {
      assertIsShip(other.newest());
      assertIsShip(other.at(2).orElseThrow());
    }
  }

  private static void assertIsShip(Lexicon edition) {
    Picture found = edition.pictures().picture(SHIP.id()).orElseThrow();
    assertThat(found.content().bytes()).isEqualTo(SHIP.content());
    assertThat(found).usingRecursiveComparison().ignoringFields("content").isEqualTo(SHIP);
  }

  /** Read when they are looked at; of what was looked at, no more is kept than may be. */
  @Test
  void manyLargePicturesDoNotFillTheMemory() {
    int size = 100_000;
    publish(
        (handle, number) -> {
          for (int i = 0; i < 30; i++) {
            new PictureWriter(handle).add(large(i, size), number);
          }
        });
    StoredPictures stored =
        new StoredPictures(database.bank().jdbi(), database.bank().outage(), 5L * size);
    List<Picture> pictures =
        database
            .bank()
            .jdbi()
            .withHandle(handle -> new MaterialReader(handle, CATALOGUE, stored).pictures(1, 2));
    assertThat(pictures).hasSize(30);
    assertThat(stored.keptBytes()).isZero();
    for (Picture each : pictures) {
      int number = Integer.parseInt(each.id().substring("large-".length()));
      assertThat(each.content().bytes()).isEqualTo(large(number, size).content());
    }
    assertThat(stored.keptBytes()).isBetween((long) size, 5L * size);
  }

  private static Picture large(int number, int size) {
    byte[] content = new byte[size];
    Arrays.fill(content, (byte) number);
    return new Picture(
        "large-" + number,
        SHIP.title(),
        SHIP.author(),
        SHIP.licence(),
        SHIP.licenceHref(),
        SHIP.source(),
        Bytes.of(content).fingerprint(),
        Picture.PNG,
        Bytes.of(content));
  }

  @Test
  void aPictureThatCannotBeReadJustNowIsSaidToBeSo() {
    publish((handle, number) -> new PictureWriter(handle).add(SHIP, number));
    Picture ship = editions.newest().pictures().picture(SHIP.id()).orElseThrow();
    database.bank().close();
    assertThatThrownBy(() -> ship.content().bytes()).isInstanceOf(UnavailableException.class);
  }

  @Test
  void aSentenceComesAndGoes() {
    publish((handle, number) -> new SentenceWriter(handle, CATALOGUE).add(FISH, number));
    publish((handle, number) -> {});
    publish(
        (handle, number) -> new SentenceWriter(handle, CATALOGUE).withdraw(FISH.text(), number));
    assertThat(at(1).sentences().all()).isEmpty();
    assertThat(at(2).sentences().of(SH, "en-GB")).containsExactly(FISH);
    assertThat(at(3).sentences().of(SH, "en-US")).containsExactly(FISH);
    assertThat(at(3).sentences().of(SH, "en-AU")).isEmpty();
    assertThat(editions.newest().sentences().all()).isEmpty();
  }

  @Test
  void needsCountSentences() {
    publish((handle, number) -> new SentenceWriter(handle, CATALOGUE).add(FISH, number));
    assertThat(Needs.in(at(2), "en-US"))
        .filteredOn(need -> need.value().equals(SH))
        .extracting(Need::sentences)
        .containsExactly(1);
    assertThat(Needs.in(at(1), "en-US")).allMatch(need -> need.sentences() == 0);
  }
}
