/**
 * Colours from photos, each with its error: regions averaged in linear light, and what a grey card
 * or a colour chart in the picture makes of them. Pictures come as rows of pixels with the colour
 * space they are in; decoding files is the caller's.
 *
 * <pre>{@code
 * int[] argb = new int[64 * 48];
 * Arrays.fill(argb, 0xFF8A4B2A);
 * Photo photo = new ArgbPhoto(64, 48, argb, RgbSpace.SRGB);
 * RegionSample plate = RegionSampler.sample(photo, new Region(10, 10, 40, 30));
 * LinearRgb mean = plate.mean();
 * }</pre>
 */
@NullMarked
package io.github.swatchwright.photo;

import org.jspecify.annotations.NullMarked;
