/**
 * What all routes for programs share: choosing an edition and a format, caching, conditional
 * requests.
 */
@NullMarked
package org.hedgerow.web.http;

import org.jspecify.annotations.NullMarked;
