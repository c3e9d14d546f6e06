package org.hedgerow.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import org.junit.jupiter.api.Test;

class LicenceTest {

  @Test
  void areFoundByTheirIds() {
    assertThat(Licence.of("CC-BY-SA-4.0")).contains(Licence.CC_BY_SA_4_0);
    assertThat(Licence.of(" cc0-1.0 ")).contains(Licence.CC0_1_0);
    assertThat(Licence.of("CC BY 4.0")).isEmpty();
    assertThat(Licence.of("CC-BY-NC-4.0")).isEmpty();
    assertThat(Licence.of("")).isEmpty();
    assertThat(Licence.ids()).doesNotHaveDuplicates().hasSize(Licence.values().length);
  }

  @Test
  void canBeRead() {
    for (Licence licence : Licence.values()) {
      assertThat(URI.create(licence.href())).hasScheme("https").hasHost("creativecommons.org");
      assertThat(licence.label()).isNotBlank();
    }
    assertThat(Licence.CC_BY_SA_4_0.href())
        .isEqualTo("https://creativecommons.org/licenses/by-sa/4.0/");
  }

  /** Nobody can put a work found elsewhere under a licence of their own. */
  @Test
  void offerFewForOwnWork() {
    assertThat(Licence.values())
        .filteredOn(Licence::isForOwnWork)
        .containsExactly(Licence.CC_BY_4_0, Licence.CC_BY_SA_4_0, Licence.CC0_1_0);
    assertThat(Licence.CC0_1_0.namesAuthor()).isFalse();
    assertThat(Licence.CC_BY_3_0.namesAuthor()).isTrue();
  }
}
