/**
 * Accents, sounds, graphemes, correspondences, and the alignment of a word's letters to its sounds.
 *
 * <p>Pure: no I/O, no framework, no clock; all values are immutable.
 */
@NullMarked
package org.hedgerow.phonics;

import org.jspecify.annotations.NullMarked;
