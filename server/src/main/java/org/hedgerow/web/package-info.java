/** The HTTP server, and what every route shares: JSON, health, metrics and problems. */
@NullMarked
package org.hedgerow.web;

import org.jspecify.annotations.NullMarked;
