/**
 * The files that a command line names: looked at before any work, read with one set of messages,
 * and written wholly or not at all.
 *
 * <p>The type of an option tells what happens to its file: {@link
 * io.github.swatchwright.cli.file.GivenFile} is read, {@link
 * io.github.swatchwright.cli.file.NewFile} is written, {@link
 * io.github.swatchwright.cli.file.NotebookFile} grows. {@link
 * io.github.swatchwright.cli.file.FileArguments} finds them by that type, so that no command has to
 * check its files by itself.
 */
@NullMarked
package io.github.swatchwright.cli.file;

import org.jspecify.annotations.NullMarked;
