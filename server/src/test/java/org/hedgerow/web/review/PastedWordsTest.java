package org.hedgerow.web.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class PastedWordsTest {
  @Test
  void wordsAloneBecomeATable() {
    assertThat(csv("boat\n\n  goat \n", "en-GB", "oa 1"))
        .isEqualTo(
            "spelling,accent,wanted-for\n\"boat\",\"en-GB\",\"oa 1\"\n\"goat\",\"en-GB\",\"oa 1\"\n");
  }

  @Test
  void aTableStaysAsItIs() {
    assertThat(csv("Spelling;Note\nboat;x\n", "", "")).isEqualTo("Spelling;Note\nboat;x\n");
  }

  @Test
  void quotationMarksCantBreakOut() {
    assertThat(csv("bo\"at", "", "")).contains("\"bo\"\"at\",\"\",\"\"\n");
  }

  private static String csv(String text, String accent, String wantedFor) {
    return new String(new PastedWords(text, accent, wantedFor).csv(), StandardCharsets.UTF_8);
  }
}
