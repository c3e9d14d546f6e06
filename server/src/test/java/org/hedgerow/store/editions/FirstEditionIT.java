package org.hedgerow.store.editions;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Span;
import org.hedgerow.store.TestDatabase;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The whole first edition, written into a real database and read back. */
class FirstEditionIT {
  private static final AtomicInteger STEPS = new AtomicInteger();

  private static TestDatabase database;
  private static FirstEdition written;
  private static FirstEdition read;

  @BeforeAll
  static void writeAndReadBack() {
    database = TestDatabase.open();
    written = SeededEdition.whole();
    new BankFiller(database.bank()).fill(() -> written, "The starter set.", STEPS::incrementAndGet);
    read = new EditionReader(database.bank()).first();
  }

  @AfterAll
  static void drop() {
    database.close();
  }

  @Test
  void readsEveryWordAsItWasWritten() {
    assertThat(read.number()).isEqualTo(1);
    assertThat(read.lexicon().words()).hasSizeGreaterThan(100_000).isEqualTo(written.words());
  }

  @Test
  void readsTheCatalogueAsItWasWritten() {
    List<Function<Correspondence, Object>> components =
        List.of(
            Correspondence::id,
            Correspondence::grapheme,
            Correspondence::value,
            Correspondence::kind,
            Correspondence::place,
            Correspondence::readsAsOne,
            Correspondence::keyWord,
            Correspondence::sounds,
            Correspondence::note);
    components.forEach(
        component ->
            assertThat(correspondences(read))
                .map(component)
                .isEqualTo(correspondences(written).stream().map(component).toList()));
  }

  private static List<Correspondence> correspondences(FirstEdition edition) {
    return edition.accents().get(0).catalogue().correspondences();
  }

  @Test
  void readsAccentsAndWeightsAsTheyWereWritten() {
    assertThat(read.accents()).hasSameSizeAs(written.accents());
    for (int i = 0; i < read.accents().size(); i++) {
      var accent = read.accents().get(i);
      var original = written.accents().get(i);
      assertThat(accent.accent().tag()).isEqualTo(original.accent().tag());
      assertThat(accent.accent().name()).isEqualTo(original.accent().name());
      assertThat(accent.accent().parent()).isEqualTo(original.accent().parent());
      assertThat(accent.accent().inventory()).isEqualTo(original.accent().inventory());
      assertThat(accent.realisations()).isEqualTo(original.realisations());
    }
  }

  @Test
  void keepsEachDistinctSpanOnlyOnce() {
    for (AccentCatalogue accent : read.accents()) {
      keepsEachDistinctSpanOnlyOnce(accent.accent().tag());
    }
  }

  private static void keepsEachDistinctSpanOnlyOnce(String accent) {
    Set<Span> distinct = new HashSet<>();
    Set<Span> objects = Collections.newSetFromMap(new IdentityHashMap<>());
    read.words().stream()
        .flatMap(word -> word.pronunciations().stream())
        .filter(pronunciation -> pronunciation.accent().equals(accent))
        .flatMap(pronunciation -> pronunciation.alignment().stream())
        .flatMap(alignment -> alignment.spans().stream())
        .forEach(
            span -> {
              distinct.add(span);
              objects.add(span);
            });
    assertThat(objects).hasSameSizeAs(distinct);
  }

  @Test
  void keepsMarginsAndStoresNoneWhereThereIsNoOtherAlignment() {
    long alone =
        pronunciations()
            .flatMap(pronunciation -> pronunciation.alignment().stream())
            .map(Alignment::margin)
            .filter(margin -> margin.isInfinite())
            .count();
    assertThat(alone).isPositive();
    assertThat(
            count(
                "select count(*) from pronunciations where margin is null and irregular_reason is null"))
        .isEqualTo(alone);
  }

  @Test
  void storesSpansForAllButIrregularPronunciations() {
    assertThat(pronunciations().filter(each -> each.alignment().isEmpty()).count())
        .isEqualTo(count("select count(*) from pronunciations where irregular_reason is not null"))
        .isEqualTo(
            count(
                "select count(*) from pronunciations p"
                    + " where not exists (select from spans where pronunciation_id = p.id)"));
  }

  @Test
  void givesRealisationsOfTheFirstAccentTheirOwnIds() {
    Realisation last = written.accents().get(0).realisations().get(7);
    assertThat(
            count(
                "select correspondence_id from realisations where id = 7 and accent = '%s'"
                    .formatted(written.accents().get(0).accent().tag())))
        .isEqualTo(last.correspondence().id());
  }

  @Test
  void tellsEveryStep() {
    assertThat(STEPS).hasValue(BankFiller.STEPS_FOR_A_WORD * written.words().size());
  }

  @Test
  void namesTheEdition() {
    assertThat(
            count(
                "select count(*) from editions where number = 1 and summary = 'The starter set.'"))
        .isEqualTo(1);
  }

  @Test
  void countsOnForWordsThatComeLater() {
    String next = "select nextval(pg_get_serial_sequence('words', 'id'))";
    assertThat(database.one(next, Integer.class)).isGreaterThan(written.words().size());
  }

  private static java.util.stream.Stream<Pronunciation> pronunciations() {
    return written.words().stream().map(Word::pronunciations).flatMap(List::stream);
  }

  private static long count(String query) {
    return database.one(query, Long.class);
  }
}
