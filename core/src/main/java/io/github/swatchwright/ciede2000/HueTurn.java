package io.github.swatchwright.ciede2000;

/**
 * By how much the hue may turn from one colour to another, when each hue is only known to lie in an
 * interval: Δh′ of CIEDE2000, whose sign and size its hue and rotation terms need.
 *
 * <p>A turn by Δh′ forwards is one by −Δh′ backwards. Where the turn may pass 180°, its direction
 * is open, and both ways reach to 180°.
 *
 * @param from the least turn forwards, in radians; below 0 when it may be backwards
 * @param to the greatest turn forwards, at most π; below 0 when it is backwards for certain
 * @param fromBack the least turn backwards
 * @param toBack the greatest turn backwards
 * @param meanHues the mean hues h̄′ that are possible
 */
record HueTurn(double from, double to, double fromBack, double toBack, HueInterval meanHues) {

  /** Nothing is known: at least one of the colours may be grey. */
  static final HueTurn ANY = new HueTurn(-Math.PI, Math.PI, -Math.PI, Math.PI, HueInterval.ALL);

  /**
   * The turn from a hue between two values to a hue about a third.
   *
   * @param first one end of the first colour's hues, in radians
   * @param last their other end, less than π away
   * @param centre the middle of the other colour's hues
   * @param half how far those reach to either side, in radians
   */
  static HueTurn between(double first, double last, double centre, double half) {
    double hue = (first + last) / 2;
    double middle = Math.IEEEremainder(centre - hue, 2 * Math.PI);
    double reach = Math.abs(last - first) / 2 + half;
    if (Math.abs(middle) + reach < Math.PI) {
      HueInterval meanHues =
          new HueInterval(Math.IEEEremainder(hue + middle / 2, 2 * Math.PI), reach / 2);
      return new HueTurn(
          middle - reach, middle + reach, -(middle + reach), -(middle - reach), meanHues);
    }
    double least = Math.abs(middle) - reach;
    return new HueTurn(least, Math.PI, least, Math.PI, HueInterval.ALL);
  }
}
