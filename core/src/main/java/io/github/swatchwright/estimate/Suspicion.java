package io.github.swatchwright.estimate;

/**
 * How little a patch agrees with all the others.
 *
 * @param logOdds ln of the odds that it isn't what it says, with all that is believed of its
 *     paints: for telling which of two that contradict each other is the odd one
 * @param chance the probability that it isn't what it says, 0 to 1, by other patches and statements
 *     alone: what is usual of a paint's strength doesn't count
 */
public record Suspicion(double logOdds, double chance) {}
