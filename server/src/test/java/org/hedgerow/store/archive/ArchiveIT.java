package org.hedgerow.store.archive;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.AuditEntry;
import org.hedgerow.operations.Role;
import org.hedgerow.store.TestDatabase;
import org.hedgerow.store.accounts.JdbiAccountRepository;
import org.hedgerow.store.database.TableColumns;
import org.hedgerow.store.editions.BankFiller;
import org.hedgerow.store.editions.EditionReader;
import org.hedgerow.store.editions.SeededEdition;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A bank written into an archive and read into another. */
class ArchiveIT {
  private static final Instant NOW = Instant.parse("2026-11-25T12:00:00.123456Z");
  private static final String NAME = "שרה \"the\\ first\"\tof\nmany";

  @TempDir private static Path folder;

  private static TestDatabase bank;
  private static TestDatabase empty;
  private static Path whole;
  private static Path nameless;

  /** A centre with a name, and a word that came by a contribution. */
  private static final List<String> SHARED =
      List.of(
          "update centre set name = 'אלה', approvals = 2, version = 2",
          "insert into contributions (kind, subject, content, state, revision, author_id, made_at,"
              + " changed_at, submitted_at, serves, remarks, edition) select 'word', 'boat',"
              + " jsonb_build_object('note', 'שלום \\ \"so\"'), 'approved', 2, id, now(), now(), now(),"
              + " '{oa 1,oa 2}', '[]', 1 from accounts",
          "insert into decisions (contribution_id, revision, kind, account_id, at, comment, edition)"
              + " select c.id, 2, 'approve', a.id, now(), 'two\nlines', 1"
              + " from contributions c, accounts a",
          "update editions set contribution_id = (select id from contributions)",
          "insert into uploads select 'sent-1', 'image/png', '\\x00ff5c', 3, 2, id, now() from accounts");

  @BeforeAll
  static void write() {
    bank = TestDatabase.open();
    empty = TestDatabase.open();
    new BankFiller(bank.bank())
        .fill(() -> SeededEdition.of("boat", "stripe", "bath", "sure"), "Four words.", () -> {});
    new JdbiAccountRepository(bank.bank())
        .inTransaction(
            page -> {
              Account account =
                  page.accounts()
                      .add("sara", NAME, Role.REVIEWER, "$argon2id$secret", NOW)
                      .orElseThrow();
              page.audit()
                  .add(
                      new AuditEntry(
                          Actor.of(account),
                          NOW,
                          "account.made",
                          "account 1",
                          Map.of(),
                          Map.of("displayName", NAME)));
              return account;
            });
    bank.bank().jdbi().useHandle(handle -> SHARED.forEach(handle::execute));
    whole = folder.resolve("whole.zip");
    nameless = folder.resolve("nameless.zip");
    new ArchiveWriter(bank.bank()).write(whole, true, NOW, table -> {});
    new ArchiveWriter(bank.bank()).write(nameless, false, NOW, table -> {});
  }

  @AfterAll
  static void drop() {
    bank.close();
    empty.close();
  }

  @Test
  void keepsEveryTableOrSaysThatItLeavesItOut() {
    List<String> known = new ArrayList<>(ArchivedTable.LEFT_OUT);
    ArchivedTable.all(true).forEach(table -> known.add(table.name()));
    assertThat(tables(bank)).containsExactlyInAnyOrderElementsOf(known);
  }

  @Test
  void givesBackEveryRowButPasswords() {
    try (TestDatabase other = TestDatabase.open()) {
      new ArchiveReader(other.bank()).read(whole, table -> {});
      for (ArchivedTable table : ArchivedTable.all(true)) {
        assertThat(rows(other, table)).as(table.name()).isEqualTo(rows(bank, table));
      }
      assertThat(new EditionReader(other.bank()).first().words())
          .isEqualTo(new EditionReader(bank.bank()).first().words());
      assertThat(other.one("select password_hash from accounts", String.class))
          .isEqualTo("$argon2id$none");
    }
  }

  @Test
  void countsOnAfterTheLastRow() {
    try (TestDatabase other = TestDatabase.open()) {
      new ArchiveReader(other.bank()).read(whole, table -> {});
      Account next =
          new JdbiAccountRepository(other.bank())
              .inTransaction(
                  page ->
                      page.accounts()
                          .add("next", "Next", Role.CONTRIBUTOR, "$argon2id$x", NOW)
                          .orElseThrow());
      assertThat(next.id()).isEqualTo(2);
    }
  }

  @Test
  void leavesOutWhoPeopleAreUnlessAsked() throws IOException {
    assertThat(content(nameless).toString()).doesNotContain("sara", "שרה", "אלה");
    assertThat(content(whole).toString()).contains("sara", "שרה").doesNotContain("secret");
  }

  @Test
  void onlyTheOwnerOfTheFileCanReadIt() throws IOException {
    assertThat(Files.getPosixFilePermissions(whole))
        .containsExactlyInAnyOrder(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);
  }

  @Test
  void theSameBankMakesTheSameArchive() throws IOException {
    Path again = folder.resolve("again.zip");
    new ArchiveWriter(bank.bank()).write(again, true, NOW, table -> {});
    assertThat(content(again)).isEqualTo(content(whole));
  }

  @Test
  void refusesABankThatIsNotEmpty() {
    assertRefused(bank, whole, "isn’t empty");
  }

  @Test
  void neverWritesOverAFile() throws IOException {
    byte[] before = Files.readAllBytes(whole);
    assertThatThrownBy(() -> new ArchiveWriter(bank.bank()).write(whole, false, NOW, table -> {}))
        .isInstanceOf(UnusableArchiveException.class)
        .hasMessageContaining("is there already");
    assertThat(whole).hasBinaryContent(before);
  }

  @Test
  void findsWhatWasChangedByHand() throws IOException {
    Path changed = edited("changed.zip", "words.jsonl", text -> text.replace("boat", "coat"));
    assertRefusedByAnEmptyBank(changed, "words.jsonl was changed");
  }

  @Test
  void findsAFileThatIsMissing() throws IOException {
    Path missing = edited("missing.zip", "spans.jsonl", text -> "");
    assertRefusedByAnEmptyBank(missing, "spans.jsonl is missing");
  }

  @Test
  void refusesAnotherSchemaAndAnotherFormat() throws IOException {
    for (String schema : List.of("0", "99", "none")) {
      Path another =
          edited(
              "schema-" + schema + ".zip",
              "manifest.json",
              text -> text.replaceAll("\"schema\" : \"\\d+\"", "\"schema\" : \"" + schema + "\""));
      assertRefusedByAnEmptyBank(another, "schema " + schema);
    }
    Path other =
        edited("other.zip", "manifest.json", text -> text.replace("hedgerow-bank-1", "cake-9"));
    assertRefusedByAnEmptyBank(other, "the format cake-9");
  }

  @Test
  void refusesWhatIsNoArchive() throws IOException {
    Path text = Files.writeString(folder.resolve("letter.zip"), "Dear all,");
    assertRefusedByAnEmptyBank(text, "can’t be read");
    assertRefusedByAnEmptyBank(edited("bare.zip", "manifest.json", x -> ""), "no manifest");
    assertRefusedByAnEmptyBank(
        edited("broken.zip", "manifest.json", x -> "{\"format\": 7}"), "can’t be read");
  }

  private static void assertRefusedByAnEmptyBank(Path archive, String message) {
    assertRefused(empty, archive, message);
    assertThat(new BankFiller(empty.bank()).isEmpty()).isTrue();
    assertThat(empty.one("select count(*)::text from accents", String.class)).isEqualTo("0");
  }

  private static void assertRefused(TestDatabase database, Path archive, String message) {
    assertThatThrownBy(() -> new ArchiveReader(database.bank()).read(archive, table -> {}))
        .isInstanceOf(UnusableArchiveException.class)
        .hasMessageContaining(message);
  }

  /** A copy of the archive with one file changed; without it if nothing is left. */
  private static Path edited(String name, String file, UnaryOperator<String> edit)
      throws IOException {
    Path copy = folder.resolve(name);
    try (ZipFile zip = new ZipFile(whole.toFile());
        OutputStream out = Files.newOutputStream(copy);
        ZipOutputStream edited = new ZipOutputStream(out)) {
      for (ZipEntry entry : zip.stream().toList()) {
        String text = new String(zip.getInputStream(entry).readAllBytes(), UTF_8);
        String kept = entry.getName().equals(file) ? edit.apply(text) : text;
        if (!kept.isEmpty() || text.isEmpty()) {
          edited.putNextEntry(new ZipEntry(entry.getName()));
          edited.write(kept.getBytes(UTF_8));
        }
      }
    }
    return copy;
  }

  private static Map<String, String> content(Path archive) throws IOException {
    Map<String, String> content = new TreeMap<>();
    try (ZipFile zip = new ZipFile(archive.toFile())) {
      for (ZipEntry entry : zip.stream().toList()) {
        content.put(entry.getName(), new String(zip.getInputStream(entry).readAllBytes(), UTF_8));
      }
    }
    return content;
  }

  private static List<String> rows(TestDatabase database, ArchivedTable table) {
    return database
        .bank()
        .jdbi()
        .withHandle(
            handle ->
                handle
                    .createQuery(table.query(TableColumns.of(handle, table.name())))
                    .mapTo(String.class)
                    .list());
  }

  private static List<String> tables(TestDatabase database) {
    return database
        .bank()
        .jdbi()
        .withHandle(
            handle ->
                handle
                    .createQuery(
                        "select table_name from information_schema.tables"
                            + " where table_schema = current_schema")
                    .mapTo(String.class)
                    .list());
  }
}
