/** Holds what the server says against what the OpenAPI document says that it says. */
@NullMarked
package org.hedgerow.web.contract;

import org.jspecify.annotations.NullMarked;
