package io.github.swatchwright.card;

import java.util.List;

/**
 * Blocks that belong together, below a heading. Kept on one sheet of paper where it fits.
 *
 * @param mark a number or sign in a box before the heading, to tick off; empty for none
 * @param heading in a few words
 * @param blocks what is in it
 */
record Section(String mark, String heading, List<Block> blocks) implements Block {

  private static final double BOX = 40;

  Section {
    blocks = List.copyOf(blocks);
  }

  @Override
  public Markup html() {
    Markup title = Markup.of("h2");
    Markup marked =
        mark.isEmpty() ? title : title.add(Markup.of("span", mark).with("class", "mark"));
    return Markup.of("section")
        .add(marked.add(Markup.of("bdi", heading)))
        .add(blocks.stream().map(Block::html).toList());
  }

  @Override
  public void draw(Sheet sheet) {
    sheet.down(22);
    sheet.bar(3);
    if (mark.isEmpty()) {
      sheet.paragraph(heading, 0, Sheet.LARGE, "strong");
    } else {
      double top = sheet.y();
      sheet.box(mark, BOX);
      sheet.back(top + (BOX - Sheet.LARGE * 1.3) / 2);
      sheet.paragraph(heading, BOX + 14, Sheet.LARGE, "strong");
      sheet.atLeast(top + BOX);
    }
    blocks.forEach(block -> block.draw(sheet));
  }
}
