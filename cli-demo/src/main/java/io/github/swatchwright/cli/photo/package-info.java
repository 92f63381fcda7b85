/** Photo files as the library's photos: decoding, colour profiles, orientation. */
@NullMarked
package io.github.swatchwright.cli.photo;

import org.jspecify.annotations.NullMarked;
