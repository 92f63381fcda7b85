package io.github.swatchwright.card;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import java.util.ArrayList;
import java.util.List;

/** Paints whose names try to be more than names. */
final class HostileShelf {
  /** Ten thousand characters, with what ends a page, a picture and a style sheet. */
  static final String ENDLESS = "</style></svg></title><script>x()</script>".repeat(240);

  static final List<String> NAMES =
      List.of(
          "<script>alert('red')</script>",
          "\"twice\" 'once' & <b onclick=\"x()\">bold</b> ]]> <!-- --> </style></title></svg>",
          "\u202Eright to left override\u202D and \u2067isolate\u200B",
          "🎨👩‍🎨 emoji; Grün 水 قرمز",
          "x".repeat(200),
          "\uFFFF no character, &lt; entity, \uD800 half a pair");

  private HostileShelf() {}

  static Shelf shelf() {
    List<Paint> paints = new ArrayList<>();
    for (String name : NAMES) {
      int i = paints.size();
      Lab masstone = Lab.ofD65(25 + 12 * i, 40 - 15 * i, 30 - 8 * i);
      paints.add(Paint.of(name, Medium.ACRYLIC, new Swatch.OfLab(masstone)));
    }
    return Shelf.of(ENDLESS, paints);
  }
}
