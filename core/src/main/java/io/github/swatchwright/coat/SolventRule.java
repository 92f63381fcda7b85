package io.github.swatchwright.coat;

import io.github.swatchwright.paint.Medium;

/**
 * What happens when one medium is painted over another, both as common practice has it: the label,
 * the data sheet and a try on scrap win.
 *
 * @param lower the medium below
 * @param upper the medium on top
 * @param verdict how that goes
 * @param reason why, as a clause
 * @param remedy what helps, as a sentence; empty when nothing is needed
 */
public record SolventRule(
    Medium lower, Medium upper, SolventVerdict verdict, String reason, String remedy) {}
