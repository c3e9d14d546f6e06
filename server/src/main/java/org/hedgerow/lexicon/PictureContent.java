package org.hedgerow.lexicon;

/**
 * What a picture is made of, which may lie elsewhere until somebody asks for it: many large
 * pictures don't have to fit into memory. It never changes. Thread-safe.
 */
@FunctionalInterface
public interface PictureContent {

  /** The content; it may have to be fetched. */
  Bytes bytes();
}
