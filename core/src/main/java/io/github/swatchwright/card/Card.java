package io.github.swatchwright.card;

import java.util.List;

/** A result as something to hang beside the pots. Immutable. */
public final class Card {
  private final String kind;
  private final String title;
  private final List<Block> blocks;

  /**
   * A card.
   *
   * @param kind what it is a card of, in a word or two
   * @param title what is on it
   * @param blocks from the top
   */
  Card(String kind, String title, List<? extends Block> blocks) {
    this.kind = kind;
    this.title = title;
    this.blocks = List.copyOf(blocks);
  }

  /**
   * The card as an HTML page that needs nothing else: no scripts, nothing fetched. It prints on A5,
   * and follows the reader's light or dark setting; swatches stay as they are.
   */
  public String toHtml() {
    Markup head =
        Markup.of("head")
            .add(Markup.of("meta").with("charset", "utf-8"))
            .add(
                Markup.of("meta")
                    .with("http-equiv", "Content-Security-Policy")
                    .with("content", policy()))
            .add(
                Markup.of("meta")
                    .with("name", "viewport")
                    .with("content", "width=device-width, initial-scale=1"))
            .add(Markup.of("meta").with("name", "color-scheme").with("content", "light dark"))
            .add(Markup.of("title", kind + ": " + title))
            .add(Markup.of("style", Style.PAGE.text()));
    Markup header =
        Markup.of("header")
            .add(Markup.of("p", kind).with("class", "kind"))
            .add(Markup.of("h1").add(Markup.of("bdi", title)));
    Markup main = Markup.of("main").add(header).add(blocks.stream().map(Block::html).toList());
    return "<!DOCTYPE html>\n"
        + Markup.of("html").with("lang", "en").add(head).add(Markup.of("body").add(main))
        + "\n";
  }

  private static String policy() {
    return "default-src 'none'; style-src " + Style.PAGE.hash() + "; form-action 'none'";
  }

  /** The card as one SVG picture that needs nothing else. */
  public String toSvg() {
    Sheet sheet = new Sheet();
    sheet.bar(8);
    sheet.paragraph(kind, 0, Sheet.SMALL, "soft");
    sheet.paragraph(title, 0, Sheet.LARGE, "strong");
    blocks.forEach(block -> block.draw(sheet));
    return sheet.toSvg(kind + ": " + title);
  }
}
