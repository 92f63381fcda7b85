package io.github.swatchwright.estimate;

/**
 * How strong a batch of a paint is, as a share of the one that the shelf describes.
 *
 * @param batch the batch
 * @param strength 1 for as strong
 * @param sd the relative error of that
 */
public record BatchStrength(PaintBatch batch, double strength, double sd) {}
