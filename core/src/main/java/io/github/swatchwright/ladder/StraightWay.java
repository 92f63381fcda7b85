package io.github.swatchwright.ladder;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import java.util.ArrayList;
import java.util.List;

/**
 * Colours on the straight line between two in CIELAB, where rust stays rust on its way to black.
 */
final class StraightWay {
  private static final int SAMPLES = 64;

  private StraightWay() {}

  /**
   * Colours that are evenly far apart along the line, by the sum of ΔE00 over short pieces.
   *
   * @param from the first
   * @param to the last, under the same white
   * @param count how many, at least 2
   */
  static List<Lab> evenly(Lab from, Lab to, int count) {
    double[] length = new double[SAMPLES + 1];
    for (int i = 1; i <= SAMPLES; i++) {
      length[i] =
          length[i - 1]
              + Ciede2000.deltaE(
                  at(from, to, (i - 1.0) / SAMPLES), at(from, to, (double) i / SAMPLES));
    }
    List<Lab> colours = new ArrayList<>(List.of(from));
    int piece = 1;
    for (int rung = 1; rung < count - 1; rung++) {
      double wanted = length[SAMPLES] * rung / (count - 1);
      while (length[piece] < wanted) {
        piece++;
      }
      double part = (wanted - length[piece - 1]) / (length[piece] - length[piece - 1]);
      colours.add(at(from, to, (piece - 1 + part) / SAMPLES));
    }
    colours.add(to);
    return colours;
  }

  private static Lab at(Lab from, Lab to, double share) {
    return new Lab(
        from.l() + share * (to.l() - from.l()),
        from.a() + share * (to.a() - from.a()),
        from.b() + share * (to.b() - from.b()),
        from.white());
  }
}
