/**
 * Command line, configuration, wiring, start and stop; the only package that knows web, store and
 * seed.
 */
@NullMarked
package org.hedgerow.app;

import org.jspecify.annotations.NullMarked;
