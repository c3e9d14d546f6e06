package org.hedgerow.store.editions;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.function.Predicate;
import org.hedgerow.phonics.Accent;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.store.database.CopyWriter;
import org.jdbi.v3.core.Handle;

/** Writes accents, correspondences and their realisations. */
final class CatalogueWriter {
  private final Handle handle;
  private final List<AccentCatalogue> accents;

  CatalogueWriter(Handle handle, List<AccentCatalogue> accents) {
    this.handle = handle;
    this.accents = accents;
  }

  void write() {
    writeAccents();
    writeCorrespondences();
    writeRealisations();
  }

  private void writeAccents() {
    try (CopyWriter rows =
        CopyWriter.into(
            handle, "accents (tag, name, place, vowels, consonants, parent, spelling)")) {
      for (int place = 0; place < accents.size(); place++) {
        Accent accent = accents.get(place).accent();
        rows.text(accent.tag()).text(accent.name()).number(place);
        rows.text(symbols(accent, Sound::vowel)).text(symbols(accent, sound -> !sound.vowel()));
        rows.optional(accent.parent().orElse("")).optional(accent.spelling()).endRow();
      }
    }
  }

  private static String symbols(Accent accent, Predicate<Sound> kind) {
    return accent.inventory().stream().filter(kind).map(Sound::ipa).collect(joining(" "));
  }

  private void writeCorrespondences() {
    try (CopyWriter rows =
        CopyWriter.into(
            handle,
            "correspondences (id, grapheme, value, class, reads_as_one, key_word, place, note)")) {
      accents.get(0).catalogue().correspondences().forEach(each -> write(rows, each));
    }
  }

  private static void write(CopyWriter rows, Correspondence correspondence) {
    rows.number(correspondence.id()).text(correspondence.grapheme().text());
    correspondence.value().ifPresentOrElse(rows::number, rows::nothing);
    rows.text(correspondence.kind().label()).flag(correspondence.readsAsOne());
    rows.optional(correspondence.keyWord()).optional(correspondence.place().text());
    rows.optional(correspondence.note()).endRow();
  }

  private void writeRealisations() {
    RealisationNumbers numbers = new RealisationNumbers(accents);
    try (CopyWriter rows =
        CopyWriter.into(handle, "realisations (id, correspondence_id, accent, sounds, cost)")) {
      for (AccentCatalogue each : accents) {
        String accent = each.accent().tag();
        for (Realisation realisation : each.realisations()) {
          rows.number(numbers.of(accent, realisation));
          rows.number(realisation.correspondence().id()).text(accent);
          rows.text(Sound.spaced(realisation.sounds())).number(realisation.cost()).endRow();
        }
      }
    }
  }
}
