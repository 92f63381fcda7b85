package io.github.swatchwright.cli;

import io.github.swatchwright.cli.sheet.SeenPicture;
import io.github.swatchwright.sheet.SheetPage;
import java.util.List;
import java.util.Locale;

/**
 * Pages that were photographed for one sheet.
 *
 * @param pages at least one, in their order
 */
record SheetPages(List<SeenPicture.Page> pages) {
  /**
   * Refuses pages of two sheets, and one that is there twice or missing.
   *
   * @param partial whether pages may be missing
   */
  void checkTogether(boolean partial) {
    SheetPage first = pages.get(0).reading().layout().page();
    int expected = 1;
    for (SeenPicture.Page seen : pages) {
      SheetPage page = seen.reading().layout().page();
      if (!page.sheet().equals(first.sheet())) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "the photos are of two sheets, %s and %s; read each by itself",
                first.sheet(),
                page.sheet()));
      }
      if (page.page() < expected) {
        throw new IllegalArgumentException(
            "page " + page.page() + " of the sheet is in two photos; give one of them");
      }
      if (page.page() > expected && !partial) {
        throw missing(expected, first);
      }
      expected = page.page() + 1;
    }
    if (expected <= first.pages() && !partial) {
      throw missing(expected, first);
    }
  }

  private static IllegalArgumentException missing(int page, SheetPage sheet) {
    return new IllegalArgumentException(
        "page "
            + page
            + " of "
            + sheet.pages()
            + " is missing; give its photo too, or --partial to do without");
  }
}
