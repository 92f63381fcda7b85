/** Published reference tables for the tests, and the invented demo shelf. */
@NullMarked
package io.github.swatchwright.testdata;

import org.jspecify.annotations.NullMarked;
