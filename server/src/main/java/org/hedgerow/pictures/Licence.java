package org.hedgerow.pictures;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The licences under which a picture can be contributed. All of them let people print, change and
 * pass on what they made, also where money is asked for it: no licence is here that forbids changes
 * or commercial use. The ids are those of the SPDX Licence List (from memory), but for the mark of
 * works that no right is in, which is no licence and which that list lacks.
 */
public enum Licence {
  CC_BY_4_0("CC-BY-4.0", "CC BY 4.0", "licenses/by/4.0/", true, true),
  CC_BY_SA_4_0("CC-BY-SA-4.0", "CC BY-SA 4.0", "licenses/by-sa/4.0/", true, true),
  CC0_1_0("CC0-1.0", "CC0 1.0", "publicdomain/zero/1.0/", true, false),
  CC_BY_3_0("CC-BY-3.0", "CC BY 3.0", "licenses/by/3.0/", false, true),
  CC_BY_SA_3_0("CC-BY-SA-3.0", "CC BY-SA 3.0", "licenses/by-sa/3.0/", false, true),
  CC_BY_2_0("CC-BY-2.0", "CC BY 2.0", "licenses/by/2.0/", false, true),
  CC_BY_SA_2_0("CC-BY-SA-2.0", "CC BY-SA 2.0", "licenses/by-sa/2.0/", false, true),
  PUBLIC_DOMAIN("public-domain", "Public domain", "publicdomain/mark/1.0/", false, false);

  private static final String CREATIVE_COMMONS = "https://creativecommons.org/";

  private final String id;
  private final String label;
  private final String path;
  private final boolean forOwnWork;
  private final boolean namesAuthor;

  Licence(String id, String label, String path, boolean forOwnWork, boolean namesAuthor) {
    this.id = id;
    this.label = label;
    this.path = path;
    this.forOwnWork = forOwnWork;
    this.namesAuthor = namesAuthor;
  }

  /** As in {@code CC-BY-SA-4.0}: how a contribution and a program name it. */
  public String id() {
    return id;
  }

  /** As in {@code CC BY-SA 4.0}: how it is printed beside the picture. */
  public String label() {
    return label;
  }

  /** Where it can be read. */
  public String href() {
    return CREATIVE_COMMONS + path;
  }

  /** Whether somebody who drew the picture is offered it; the others are for works found. */
  public boolean isForOwnWork() {
    return forOwnWork;
  }

  /** Whether it asks that the author be named. */
  public boolean namesAuthor() {
    return namesAuthor;
  }

  /** By its id, small and capital letters being the same. */
  public static Optional<Licence> of(String id) {
    return Arrays.stream(values())
        .filter(licence -> licence.id.equalsIgnoreCase(id.strip()))
        .findFirst();
  }

  /** What can be said in place of an id that is none. */
  public static List<String> ids() {
    return Arrays.stream(values()).map(Licence::id).toList();
  }
}
