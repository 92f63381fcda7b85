package io.github.swatchwright.cli.sheet;

import io.github.swatchwright.sheet.Paper;
import java.io.IOException;
import java.util.List;
import java.util.Random;

/** One invented photo of a sheet with a grey card on it. */
public final class PhotographedSheet {
  private PhotographedSheet() {}

  /** The JPEG file; a seed draws the paints. */
  public static byte[] withGreyCard(long seed, int longer) throws IOException {
    Random random = new Random(seed);
    SheetScene scene = SheetTrials.scene(random, SheetTrials.Card.GREY, Paper.A4);
    SheetCamera.Trouble trouble =
        new SheetCamera.Trouble(15, 5, 0.01, 4200, 0.75, false, 1, -1, List.of(4), 0.7, 0.005);
    return new SheetCamera(scene, trouble, longer * 3 / 4, longer, random).shoot();
  }
}
