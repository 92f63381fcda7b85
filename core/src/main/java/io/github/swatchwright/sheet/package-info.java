/**
 * A printed sheet of fields, one stroke of paint each over black and over bare paper: where
 * everything is on it, and what a photo of it says. Photos come as rows of pixels; finding the code
 * on the sheet, decoding files and printing are the caller's. Lengths are millimetres from the left
 * upper corner of the paper.
 *
 * <pre>{@code
 * SheetPage page = SheetPage.of(Paper.A4, List.of("Yellow oxide", "Red oxide"));
 * SheetLayout layout = SheetLayout.of(page);
 * Area stroke = layout.fields().get(0).stroke();
 * }</pre>
 */
@NullMarked
package io.github.swatchwright.sheet;

import org.jspecify.annotations.NullMarked;
