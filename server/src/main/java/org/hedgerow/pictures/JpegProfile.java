package org.hedgerow.pictures;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.Optional;

/** Collects a colour profile that a JPEG carries in segments (ICC.1, annex B.4). */
final class JpegProfile {

  private static final String NAME = "ICC_PROFILE\0";

  /** The number of the segment and how many there are. */
  private static final int NUMBERS = 2;

  private final ByteArrayOutputStream profile = new ByteArrayOutputStream();

  /** Taken in the order in which they stand, which is how they are written. */
  void add(ByteBuffer segment) {
    int start = NAME.length() + NUMBERS;
    if (JpegReading.startsWith(segment, NAME) && segment.remaining() > start) {
      ByteBuffer part = segment.slice(start, segment.remaining() - start);
      profile.write(part.array(), part.arrayOffset(), part.remaining());
    }
  }

  Optional<ColourProfile> profile() {
    return ColourProfile.of(profile.toByteArray());
  }
}
