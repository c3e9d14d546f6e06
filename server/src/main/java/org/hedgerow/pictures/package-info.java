/**
 * What people upload, turned into pictures that are safe to show to children and to browsers:
 * {@link org.hedgerow.pictures.PictureIntake}. No SQL and no HTTP.
 *
 * <p>Nothing that was uploaded is ever handed on. A PNG or JPEG is decoded and written anew from
 * its pixels; an SVG is built anew from a list of elements, attributes and values that are known.
 * Whatever is read before that is bounded, in bytes and in time, by limits that stand beside it.
 */
@NullMarked
package org.hedgerow.pictures;

import org.jspecify.annotations.NullMarked;
