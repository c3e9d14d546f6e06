/**
 * Bounded caches that nobody can be stuck in: nothing is computed while a part of a cache is
 * locked, and nothing depends on a shared pool of threads.
 */
@NullMarked
package org.hedgerow.caching;

import org.jspecify.annotations.NullMarked;
