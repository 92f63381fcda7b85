package io.github.swatchwright.card;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A card as an HTML page: as text for a screen of any width, and as drawn pages for paper, of which
 * a browser shows the one and prints the other.
 *
 * @param card the card
 */
record HtmlCard(Card card) {

  String toText() {
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
            .add(Markup.of("title", card.kind() + ": " + card.title()))
            .add(Markup.of("style", Style.PAGE.text()));
    Markup body = Markup.of("body").add(screen()).add(paper());
    return "<!DOCTYPE html>\n" + Markup.of("html").with("lang", "en").add(head).add(body) + "\n";
  }

  private static String policy() {
    return "default-src 'none'; style-src " + Style.PAGE.hash() + "; form-action 'none'";
  }

  private Markup screen() {
    Markup header =
        Markup.of("header")
            .add(Markup.of("p", card.kind()).with("class", "kind"))
            .add(Markup.of("h1").add(Markup.of("bdi", card.title())));
    String from = String.join(" · ", from(card.origin()));
    return Markup.of("main")
        .add(from.isEmpty() ? header : header.add(Markup.of("p", from).with("class", "soft")))
        .add(card.parts().stream().map(HtmlParts::of).toList());
  }

  private static List<String> from(CardOrigin origin) {
    List<String> known = new ArrayList<>();
    origin.date().map(LocalDate::toString).ifPresent(known::add);
    origin.shelf().ifPresent(shelf -> known.add("Shelf: " + Label.of(shelf)));
    origin.project().ifPresent(project -> known.add("Project: " + Label.of(project)));
    origin.entry().ifPresent(entry -> known.add("Notebook entry no. " + entry));
    return known;
  }

  /** Readers of a screen, and those who hear it, have the text. */
  private Markup paper() {
    return Markup.of("div")
        .with("class", "paper")
        .with("aria-hidden", "true")
        .add(card.pages().stream().map(PageSvg::page).toList());
  }
}
