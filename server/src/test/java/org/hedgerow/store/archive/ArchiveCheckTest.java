package org.hedgerow.store.archive;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.hedgerow.pictures.PictureIntake;
import org.hedgerow.store.database.Digests;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What no bank of ours would hold is found before anything is written. */
class ArchiveCheckTest {
  private static final String ACCENT =
      "{\"tag\":\"en-US\",\"vowels\":\"oʊ ʊ\",\"consonants\":\"b t\",\"place\":0}";
  private static final String DRAWING =
      "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 8 8\"><path d=\"M0 0h8v8\"/></svg>";

  @TempDir private Path folder;

  private final Map<String, String> files = new TreeMap<>();
  private int edition = 2;

  ArchiveCheckTest() {
    for (ArchivedTable table : ArchivedTable.all(true)) {
      files.put(table.file(), "");
    }
    files.put("accents.jsonl", ACCENT + "\n");
    files.put("accounts.jsonl", "{\"id\":1,\"password_hash\":\"$argon2id$none\"}\n");
    files.put("editions.jsonl", "{\"number\":1}\n{\"number\":2}\n");
    files.put("pronunciations.jsonl", "{\"accent\":\"en-US\",\"sounds\":\"b oʊ t\"}\n");
    files.put("realisations.jsonl", "{\"accent\":\"en-US\",\"sounds\":\"\"}\n");
  }

  private void check() throws IOException {
    List<ArchiveManifest.File> listed = new ArrayList<>();
    Path file = folder.resolve("bank.zip");
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, String> each : files.entrySet()) {
        byte[] bytes = each.getValue().getBytes(UTF_8);
        zip.putNextEntry(new ZipEntry(each.getKey()));
        zip.write(bytes);
        listed.add(
            new ArchiveManifest.File(
                each.getKey(),
                each.getValue().lines().count(),
                HexFormat.of().formatHex(Digests.sha256().digest(bytes))));
      }
      zip.putNextEntry(new ZipEntry(ArchiveManifest.FILE));
      zip.write(
          ArchiveJson.bytes(
              new ArchiveManifest(
                  ArchiveManifest.FORMAT, "6", edition, Instant.EPOCH, true, listed)));
    }
    try (Archive archive = Archive.open(file)) {
      ArchiveCheck.run(archive);
    }
  }

  private void assertRefused(String message) {
    assertThatThrownBy(this::check)
        .isInstanceOf(UnusableArchiveException.class)
        .hasMessageContaining(message)
        .hasMessageEndingWith("The bank stays empty.")
        .message()
        .hasLineCount(1);
  }

  @Test
  void takesWhatABankHolds() {
    assertThatCode(this::check).doesNotThrowAnyException();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          pronunciations | {"accent":"en-US","sounds":"b ʌ t"}  | line 1 has the sound /ʌ/, which en-US doesn’t
          pronunciations | {"accent":"en-XX","sounds":"b"}      | which en-XX doesn’t
          realisations   | {"accent":"en-US","sounds":"ʊ ʊə"}   | has the sound /ʊə/
          accounts       | {"password_hash":"$argon2id$v=19$x"} | holds a password hash
          accounts       | {"name":"rowan"}                     | holds a password hash
          editions       | {"number":2}                         | line 1 is edition 2 where 1 should follow
          editions       | {"summary":"none"}                   | edition without a number
          accents        | [1]                                  | is no JSON object
          accents        | {"tag":                              | is no JSON
          """)
  void saysWhatIsWrongAndWhere(String table, String line, String message) {
    files.put(table + ".jsonl", line + "\n");
    assertRefused(message);
  }

  @Test
  void findsAGapAndAMissingEnd() {
    files.put("editions.jsonl", "{\"number\":1}\n{\"number\":3}\n");
    assertRefused("editions.jsonl, line 2 is edition 3 where 2 should follow");
    files.put("editions.jsonl", "{\"number\":1}\n");
    assertRefused("ends with edition 1, the manifest says 2");
  }

  private void picture(String svg) {
    String hex = HexFormat.of().formatHex(svg.getBytes(UTF_8));
    files.put(
        "pictures.jsonl",
        "{\"id\":\"a\",\"media_type\":\"image/svg+xml\",\"content\":\"\\\\x%s\"}\n".formatted(hex));
  }

  @Test
  void takesOnlyPicturesThatTheIntakeMadeItself() throws IOException {
    byte[] clean = new PictureIntake().take(DRAWING.getBytes(UTF_8)).content().toArray();
    picture(new String(clean, UTF_8));
    check();
    picture(DRAWING.replace("<path", "<script>alert(1)</script><path"));
    assertRefused("pictures.jsonl, line 1 has a picture that isn’t safe to show");
    picture(DRAWING.replace("<path", "<!-- something else --><path"));
    assertRefused("with more in it than shapes");
  }

  @Test
  void readsNoEndlessLine() {
    files.put("words.jsonl", "{\"spelling\":\"" + "o".repeat(1_000_001) + "\"}\n");
    assertRefused("words.jsonl, line 1 is longer than 1,000,000 characters");
  }
}
