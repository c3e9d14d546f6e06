/** The OpenAPI document of the HTTP interface and the guide to it. */
@NullMarked
package org.hedgerow.apidocs;

import org.jspecify.annotations.NullMarked;
