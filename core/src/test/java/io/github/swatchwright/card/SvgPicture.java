package io.github.swatchwright.card;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * A picture of speckles as another program draws it: rectangles, and paths of {@code M}, {@code q}
 * and {@code t} alone, by SVG 1.1, 8.3.7, filled without smoothing of edges.
 */
final class SvgPicture {
  private static final int WIDE = 1000;
  private static final Pattern COMMAND = Pattern.compile("([Mqt])([-0-9 ]+)");
  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+");
  private static final Pattern TRANSFORM =
      Pattern.compile("translate\\(([-0-9.]+) ([-0-9.]+)\\)scale\\(([-0-9.E]+)\\)");

  private final BufferedImage image;

  private SvgPicture(BufferedImage image) {
    this.image = image;
  }

  static SvgPicture of(String svg) {
    Element root = Xml.parse(svg);
    double[] box =
        Arrays.stream(root.getAttribute("viewBox").split(" "))
            .mapToDouble(Double::parseDouble)
            .toArray();
    BufferedImage image =
        new BufferedImage(WIDE, (int) (WIDE * box[3] / box[2]), BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    double scale = WIDE / box[2];
    NodeList shapes = root.getElementsByTagName("*");
    for (int i = 0; i < shapes.getLength(); i++) {
      Element shape = (Element) shapes.item(i);
      graphics.setColor(Color.decode(shape.getAttribute("fill")));
      if (shape.getTagName().equals("rect")) {
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
      } else {
        AffineTransform place = AffineTransform.getScaleInstance(scale, scale);
        place.concatenate(transform(shape.getAttribute("transform")));
        graphics.fill(place.createTransformedShape(path(shape.getAttribute("d"))));
      }
    }
    graphics.dispose();
    return new SvgPicture(image);
  }

  private static AffineTransform transform(String text) {
    Matcher found = TRANSFORM.matcher(text);
    if (!found.matches()) {
      throw new AssertionError(text);
    }
    AffineTransform transform =
        AffineTransform.getTranslateInstance(
            Double.parseDouble(found.group(1)), Double.parseDouble(found.group(2)));
    double scale = Double.parseDouble(found.group(3));
    transform.scale(scale, scale);
    return transform;
  }

  private static Path2D path(String text) {
    Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
    Matcher command = COMMAND.matcher(text);
    double[] at = {0, 0};
    double[] control = {0, 0};
    while (command.find()) {
      double[] n =
          NUMBER
              .matcher(command.group(2))
              .results()
              .mapToDouble(found -> Double.parseDouble(found.group()))
              .toArray();
      switch (command.group(1)) {
        case "M" -> {
          at = new double[] {n[0], n[1]};
          path.moveTo(at[0], at[1]);
        }
        case "q" -> {
          control = new double[] {at[0] + n[0], at[1] + n[1]};
          at = new double[] {at[0] + n[2], at[1] + n[3]};
          path.quadTo(control[0], control[1], at[0], at[1]);
        }
        default -> {
          for (int i = 0; i < n.length; i += 2) {
            control = new double[] {2 * at[0] - control[0], 2 * at[1] - control[1]};
            at = new double[] {at[0] + n[i], at[1] + n[i + 1]};
            path.quadTo(control[0], control[1], at[0], at[1]);
          }
        }
      }
    }
    return path;
  }

  /** The share of the picture in that colour. */
  double share(String hex) {
    int wanted = Color.decode(hex).getRGB();
    long count = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        count += image.getRGB(x, y) == wanted ? 1 : 0;
      }
    }
    return (double) count / (image.getWidth() * image.getHeight());
  }
}
