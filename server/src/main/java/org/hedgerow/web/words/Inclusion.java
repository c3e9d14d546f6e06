package org.hedgerow.web.words;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Tag;

/** What lists leave out unless it is asked for. */
enum Inclusion {
  NAMES("names", Tag.NAME),
  NOT_FOR_CHILDREN("not-for-children", Tag.NOT_FOR_CHILDREN),
  INFLECTED("inflected", Tag.INFLECTED),
  OTHER_SPELLINGS("other-spellings", Tag.REGION);

  static final List<String> LABELS = Arrays.stream(values()).map(Inclusion::label).toList();

  private final String label;
  private final String tag;

  Inclusion(String label, String tag) {
    this.label = label;
    this.tag = tag;
  }

  String label() {
    return label;
  }

  /** The kind of {@link Tag} that such words bear. */
  String tag() {
    return tag;
  }

  static Optional<Inclusion> labelled(String label) {
    return Arrays.stream(values()).filter(each -> each.label.equals(label)).findFirst();
  }
}
