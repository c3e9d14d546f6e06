/**
 * What all operations on the bank share: who asks, why they may be refused, the record of what was
 * done, and answers kept for requests that are repeated.
 */
@NullMarked
package org.hedgerow.operations;

import org.jspecify.annotations.NullMarked;
