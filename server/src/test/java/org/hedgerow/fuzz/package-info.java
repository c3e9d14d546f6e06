/**
 * Hostile and half-valid requests for every operation of the OpenAPI document, generated from a
 * seed, and what no answer to them may be.
 */
@NullMarked
package org.hedgerow.fuzz;

import org.jspecify.annotations.NullMarked;
