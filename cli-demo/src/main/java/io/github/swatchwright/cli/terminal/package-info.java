/**
 * What a terminal shows: its width and colours, text in lines and columns, colour blocks, progress.
 *
 * <p>{@link io.github.swatchwright.cli.terminal.ScreenText} is the one place through which printed
 * text goes: nothing that came from outside can move the cursor or hide what follows it.
 */
@NullMarked
package io.github.swatchwright.cli.terminal;

import org.jspecify.annotations.NullMarked;
