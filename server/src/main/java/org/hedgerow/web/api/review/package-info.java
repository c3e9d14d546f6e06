/**
 * Contributions, decisions and pictures over HTTP, as the OpenAPI document says. Which revision of
 * a contribution is meant stands in {@code If-Match}; its {@code ETag} is its revision.
 */
@NullMarked
package org.hedgerow.web.api.review;

import org.jspecify.annotations.NullMarked;
