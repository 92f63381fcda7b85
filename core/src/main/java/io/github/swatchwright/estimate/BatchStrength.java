package io.github.swatchwright.estimate;

/**
 * How strong a batch of a paint is, as a share of the one that the shelf describes.
 *
 * @param paint the paint's name
 * @param batch what tells the batch from others
 * @param strength 1 for as strong
 * @param sd the relative error of that
 */
public record BatchStrength(String paint, String batch, double strength, double sd) {}
