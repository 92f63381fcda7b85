/** The command line: arguments in, text or JSON out. All colour computation is the library's. */
@NullMarked
package io.github.swatchwright.cli;

import org.jspecify.annotations.NullMarked;
