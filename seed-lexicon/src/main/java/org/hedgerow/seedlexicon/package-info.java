/**
 * The data every bank is seeded from, with typed readers. Each folder under {@code seed/} is one
 * source, with its licence and its {@code SOURCE.md}; {@link org.hedgerow.seedlexicon.SeedLexicon}
 * is the way in.
 */
@NullMarked
package org.hedgerow.seedlexicon;

import org.jspecify.annotations.NullMarked;
