package io.github.swatchwright.sheet;

/**
 * A camera in space over a flat sheet, as in any book on projective geometry: the sheet is turned
 * about two axes, moved away, and divided by its distance. It shares nothing with {@link
 * Homography}. A lens may bend what it sees about the picture's middle.
 */
record PinholeCamera(
    double tilt,
    double roll,
    double lens,
    double width,
    double height,
    double pictureWidth,
    double pictureHeight) {

  /** Where a place of the sheet, mm, is in the picture, pixels. */
  Spot sees(Spot place) {
    double x = place.x() - width / 2;
    double y = place.y() - height / 2;
    double turnedX = x * Math.cos(roll) - y * Math.sin(roll);
    double turnedY = x * Math.sin(roll) + y * Math.cos(roll);
    double near = turnedY * Math.cos(tilt);
    double away = 600 + turnedY * Math.sin(tilt);
    double focal = 1.7 * pictureHeight;
    double u = focal * turnedX / away;
    double v = focal * near / away;
    double radius = Math.hypot(pictureWidth, pictureHeight) / 2;
    double bend = 1 + lens * (u * u + v * v) / (radius * radius);
    return new Spot(pictureWidth / 2 + bend * u, pictureHeight / 2 + bend * v);
  }
}
