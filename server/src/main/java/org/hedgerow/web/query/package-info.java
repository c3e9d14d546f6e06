/**
 * Reads questions from text: query parameters and the terms of the trade in them. Whatever is wrong
 * with a question is collected and told in words, with the nearest thing that exists.
 *
 * <p>Knows neither JSON nor pages, and serves both.
 */
@NullMarked
package org.hedgerow.web.query;

import org.jspecify.annotations.NullMarked;
