/** Printed sheets as files, and their codes found in photos. */
@NullMarked
package io.github.swatchwright.cli.sheet;

import org.jspecify.annotations.NullMarked;
