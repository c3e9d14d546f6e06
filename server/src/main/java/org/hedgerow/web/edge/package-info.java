/**
 * What stands between the network and the routes: no thread waits for a client, bodies have a
 * limit, and every answer carries the same headers.
 */
@NullMarked
package org.hedgerow.web.edge;

import org.jspecify.annotations.NullMarked;
