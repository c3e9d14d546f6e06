package org.hedgerow.web.edge;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.zip.GZIPOutputStream;
import org.eclipse.jetty.util.BufferUtil;

/** Compressed answers: other representations, which have tags of their own. */
public final class Gzip {
  private static final String MARK = "-gzip\"";

  private Gzip() {}

  public static byte[] compress(byte[] bytes) {
    ByteArrayOutputStream compressed = new ByteArrayOutputStream(bytes.length / 4);
    try (GZIPOutputStream gzip = new GZIPOutputStream(compressed)) {
      gzip.write(bytes);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return compressed.toByteArray();
  }

  static ByteBuffer compress(ByteBuffer bytes) {
    return ByteBuffer.wrap(compress(BufferUtil.toArray(bytes)));
  }

  /**
   * The entity tag of the compressed representation.
   *
   * @param tag of the plain one, with its quotes
   */
  public static String tag(String tag) {
    return tag.endsWith(MARK) ? tag : tag.substring(0, tag.length() - 1) + MARK;
  }

  /** The same tags, of the plain representations. */
  static String plainAll(String tags) {
    return tags.replace(MARK, "\"");
  }

  /** The tag of the plain representation, whichever this is of. */
  public static String plain(String tag) {
    return tag.endsWith(MARK) ? tag.substring(0, tag.length() - MARK.length()) + "\"" : tag;
  }
}
