package io.github.swatchwright.card;

import java.util.List;

/** A result as something to lie on the bench beside the pots. Immutable. */
public final class Card {
  private final String kind;
  private final String title;
  private final CardOrigin origin;
  private final List<CardPart> parts;

  /**
   * A card.
   *
   * @param kind what it is a card of, in a word or two
   * @param title what is on it
   * @param parts from the top
   */
  Card(String kind, String title, List<CardPart> parts) {
    this(kind, title, CardOrigin.UNKNOWN, parts);
  }

  private Card(String kind, String title, CardOrigin origin, List<CardPart> parts) {
    this.kind = kind;
    this.title = title;
    this.origin = origin;
    this.parts = List.copyOf(parts);
  }

  /** The same card that tells where it comes from. */
  public Card from(CardOrigin where) {
    return new Card(kind, title, where, parts);
  }

  /** What it is a card of, in a word or two. */
  public String kind() {
    return kind;
  }

  /** What is on it. */
  public String title() {
    return title;
  }

  /** Where it comes from. */
  public CardOrigin origin() {
    return origin;
  }

  /** Its content as data, from the top. */
  public List<CardPart> parts() {
    return parts;
  }

  /** The card on pages of A5 paper, for whatever prints them. */
  public List<Page> pages() {
    return PaperCard.pages(this);
  }

  /**
   * The card as an HTML page that needs nothing else: no scripts, nothing fetched. On a screen it
   * follows the width and the light or dark setting of whoever reads it; swatches stay as they are.
   * It prints as {@link #pages} has it, whatever fonts the printing machine has.
   */
  public String toHtml() {
    return new HtmlCard(this).toText();
  }

  /** The card's pages below each other as one SVG picture that needs nothing else. */
  public String toSvg() {
    List<Page> pages = pages();
    double width = pages.get(0).width();
    double height = pages.stream().mapToDouble(Page::height).sum();
    Markup svg =
        Markup.of("svg")
            .with("xmlns", "http://www.w3.org/2000/svg")
            .with("viewBox", "0 0 " + Markup.number(width) + " " + Markup.number(height))
            .with("width", Markup.number(width) + "mm")
            .with("height", Markup.number(height) + "mm")
            .add(Markup.of("title", kind + ": " + title))
            .add(Markup.of("style", Style.SHEET.text()));
    double top = 0;
    for (Page page : pages) {
      svg =
          svg.add(
              PageSvg.page(page)
                  .with("y", top)
                  .with("width", page.width())
                  .with("height", page.height()));
      top += page.height();
    }
    return svg + "\n";
  }
}
