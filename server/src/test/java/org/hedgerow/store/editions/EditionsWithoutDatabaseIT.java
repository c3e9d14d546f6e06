package org.hedgerow.store.editions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.OptionalInt;
import org.hedgerow.lexicon.EditionLog;
import org.hedgerow.lexicon.PublishedEdition;
import org.hedgerow.lexicon.WordChange;
import org.hedgerow.operations.UnavailableException;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.StoppableDatabase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What can be told of editions while the database is away. */
class EditionsWithoutDatabaseIT {
  private static final FirstEdition FIRST = SeededEdition.of("boat", "wool", "ship", "stripe");

  @TempDir private Path folder;

  @Test
  void theirRecordAndWhatTheyChangedIsRemembered() throws Exception {
    try (StoppableDatabase database = StoppableDatabase.start(folder)) {
      BankDatabase bank = database.bank();
      new BankFiller(bank).fill(() -> FIRST, "The first.", () -> {});
      withdraw(bank, "ship");
      try (LiveEditions editions =
          new LiveEditions(bank, new EditionReader(bank).first().lexicon())) {
        editions.catchUp(withdraw(bank, "boat"));
        List<PublishedEdition> before = editions.log().before(Integer.MAX_VALUE, 10);
        assertThat(before).extracting(PublishedEdition::number).containsExactly(3, 2, 1);
        assertThat(editions.at(2)).isPresent();
        awaitRemembered(editions.log());

        database.stop();
        assertThatThrownBy(() -> bank.outage().told(() -> editionsCounted(bank)))
            .isInstanceOf(UnavailableException.class);
        EditionLog log = editions.log();
        assertThat(log.before(Integer.MAX_VALUE, 10)).isEqualTo(before);
        assertThat(log.before(3, 1)).extracting(PublishedEdition::number).containsExactly(2);
        assertThat(log.edition(2)).contains(before.get(1));
        assertThat(log.edition(4)).isEmpty();
        assertThat(log.ofWord("boat", 3)).containsExactly(before.get(0));
        assertThat(log.ofWord("boat", 2)).isEmpty();
        assertThat(log.changes(3)).extracting(WordChange::spelling).containsExactly("boat");
        assertThat(log.changes(2)).extracting(WordChange::spelling).containsExactly("ship");
        assertThat(editions.at(2)).as("the one before the newest").isPresent();
        assertThat(editions.at(4)).isEmpty();
      }
    }
  }

  private static int withdraw(BankDatabase bank, String spelling) {
    return bank.jdbi()
        .inTransaction(
            handle -> {
              EditionWriter writer = new EditionWriter(handle, FIRST.accents());
              int edition =
                  writer.publish(
                      "A test.", OptionalInt.empty(), OptionalInt.empty(), Instant.EPOCH);
              writer.withdraw(spelling, edition);
              return edition;
            });
  }

  private static int editionsCounted(BankDatabase bank) {
    return new EditionReader(bank).newestNumber();
  }

  private static void awaitRemembered(EditionLog log) throws InterruptedException {
    RememberedEditionLog remembered = (RememberedEditionLog) log;
    while (!remembered.isComplete()) {
      Thread.sleep(10);
    }
  }
}
