package io.github.swatchwright.plan;

import java.util.Locale;

/**
 * What is done at the bench without getting up: some coats of a step.
 *
 * @param day days after the first, from 0
 * @param part of the day
 * @param startMinute when it begins, in minutes after midnight
 * @param step the step's number
 * @param firstCoat the first coat or pass, from 1
 * @param lastCoat the last coat or pass
 * @param coats how many the step has in all
 */
public record Sitting(
    int day, DayPart part, int startMinute, int step, int firstCoat, int lastCoat, int coats) {
  /** When it begins, such as {@code 09:15}. */
  public String startTime() {
    return String.format(Locale.ROOT, "%02d:%02d", startMinute / 60, startMinute % 60);
  }
}
