package io.github.swatchwright.card;

/** One thing on a card, below the one before and above the next. */
interface Block {

  /** The block as part of a page. */
  Markup html();

  /** Draws the block on a sheet, at its current height. */
  void draw(Sheet sheet);
}
