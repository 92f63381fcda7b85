package io.github.swatchwright.estimate;

import java.time.LocalDate;
import java.util.Optional;

/**
 * How strong a paint is on the latest day on which cards were painted with it, compared with an
 * earlier day.
 *
 * @param paint the paint's name
 * @param since the earlier day; empty for one that nobody wrote down
 * @param latest the latest day
 * @param strength its strength on the latest day, as a share of that on the earlier day
 * @param sd the relative error of that
 */
public record DayStrength(
    String paint,
    Optional<LocalDate> since,
    Optional<LocalDate> latest,
    double strength,
    double sd) {}
