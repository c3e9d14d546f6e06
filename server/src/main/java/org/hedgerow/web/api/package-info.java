/** The HTTP interface for programs: routes under {@code /api/v1}, and its documentation. */
@NullMarked
package org.hedgerow.web.api;

import org.jspecify.annotations.NullMarked;
