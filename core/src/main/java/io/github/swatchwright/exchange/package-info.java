/**
 * Shelves and colours in other people's formats: CSV (RFC 4180), the GIMP palette text format, and
 * the measurement files of colour instruments (CGATS.17, ISO 28178).
 *
 * <p>A file is imported wholly or not at all: {@link
 * io.github.swatchwright.exchange.BadLinesException} lists every line that can't be taken, with its
 * number and the reason. A file may have at most 10,000,000 bytes, 20,000 characters a field and
 * 2,000 fields a line, and no more colours than a shelf has paints.
 *
 * <pre>{@code
 * String table = ShelfCsv.toText(shelf);
 * Shelf same =
 *     ShelfImport.CSV.read(
 *         table.getBytes(StandardCharsets.UTF_8), "bench.csv", new ImportDefaults("Bench", Optional.empty()));
 * String palette = GimpPalette.toText(shelf);
 * }</pre>
 */
@NullMarked
package io.github.swatchwright.exchange;

import org.jspecify.annotations.NullMarked;
