package io.github.swatchwright.calibrate;

import io.github.swatchwright.mix.Progress;
import java.util.function.BooleanSupplier;

/**
 * How a calibration is watched and stopped: none of this changes what a completed one finds.
 *
 * @param cancelled asked every now and then, from any thread; true ends the calibration with a
 *     {@link java.util.concurrent.CancellationException}
 * @param progress receives the share done; how many rounds are needed isn't known beforehand, so
 *     the share is an estimate that never falls, and 1 at the end
 */
public record CalibrationControl(BooleanSupplier cancelled, Progress progress) {
  /** Runs to the end, and reports no progress. */
  public static final CalibrationControl PLAIN =
      new CalibrationControl(() -> false, Progress.UNHEARD);

  /** Rounds that a calibration usually takes. */
  private static final double USUAL_ROUNDS = 4;

  Steps steps() {
    return new Steps(progress);
  }

  /** Counts the rounds of one calibration. */
  static final class Steps {
    private final Progress progress;
    private int done;

    private Steps(Progress progress) {
      this.progress = progress;
    }

    /** One more round is done. */
    void next() {
      done++;
      progress.reached(done / (done + USUAL_ROUNDS));
    }
  }
}
