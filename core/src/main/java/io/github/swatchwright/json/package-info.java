/**
 * JSON in and out: shelves, test cards, recipes and results. The only package that refers to
 * Jackson.
 *
 * <p>Reading is strict. Unknown fields, fields given twice, wrong types, numbers that aren't finite
 * and numbers out of range are refused by a {@link io.github.swatchwright.json.JsonInputException}
 * of one line, which names the source, the place and what is allowed. So that no file can exhaust a
 * phone, a document may hold at most 10,000,000 bytes of UTF-8, two million tokens, 16 levels,
 * strings of 20,000 characters, field names of 1,000 and numbers of 100.
 *
 * <p>What is stored (shelves, cards) is written with every digit, and reads back to equal values.
 * Results are for reading: their numbers are rounded to four decimals, and never NaN.
 *
 * <pre>{@code
 * String text = ShelfJson.toText(shelf);
 * Shelf same = ShelfJson.parse(text, "my shelf");
 * }</pre>
 */
@NullMarked
package io.github.swatchwright.json;

import org.jspecify.annotations.NullMarked;
