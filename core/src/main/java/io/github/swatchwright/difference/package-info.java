/**
 * How far apart two colours look. All formulas take CIELAB colours relative to the same white, and
 * refuse others.
 *
 * <table>
 * <caption>Which formula to choose</caption>
 * <tr><th>formula</th><th>agreement with the eye</th><th>cost</th><th>symmetric</th>
 *     <th>notes</th></tr>
 * <tr><td>{@link io.github.swatchwright.difference.Ciede2000}</td><td>best of these, up to about
 *     5</td><td>4</td><td>yes</td><td>the default: ISO/CIE 11664-6; not continuous where two
 *     hues are opposite</td></tr>
 * <tr><td>{@link io.github.swatchwright.difference.Cmc}</td><td>good for
 *     textiles</td><td>9</td><td>no</td><td>ISO 105-J03; for
 *     figures that a standard asks for</td></tr>
 * <tr><td>{@link io.github.swatchwright.difference.Cie94}</td><td>fair; poor in
 *     blues</td><td>4</td><td>no</td><td>superseded; for comparing with old
 *     figures</td></tr>
 * <tr><td>{@link io.github.swatchwright.difference.Cie76}</td><td>poor where chroma is
 *     high</td><td>1</td><td>yes</td><td>a true distance: obeys the triangle inequality, which the
 *     others don't; for search trees and for very large differences</td></tr>
 * </table>
 *
 * <p>Costs are times that of {@code Cie76}, about 12 ns where they were measured ({@code
 * FormulaCostBenchmark}). Figures of different formulas can't be compared with each other.
 *
 * <pre>{@code
 * Lab wanted = Srgb.parse("#8A4B2A").toLab();
 * Lab mixed = Srgb.parse("#8D4F2C").toLab();
 * Verdict verdict = Verdict.of(Ciede2000.deltaE(wanted, mixed));
 * }</pre>
 */
@NullMarked
package io.github.swatchwright.difference;

import org.jspecify.annotations.NullMarked;
