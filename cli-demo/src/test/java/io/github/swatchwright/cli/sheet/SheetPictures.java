package io.github.swatchwright.cli.sheet;

import io.github.swatchwright.card.SheetPrint;
import io.github.swatchwright.sheet.Paper;
import io.github.swatchwright.sheet.SheetDrawing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;

/**
 * Writes a sheet as PDF and PNG and a photo of it into a folder: what the documentation shows, and
 * what a painter may try the command with.
 */
final class SheetPictures {
  private SheetPictures() {}

  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    int longer = Integer.parseInt(args[1]);
    Random random = new Random(2);
    SheetScene scene = SheetTrials.scene(random, SheetTrials.Card.GREY, Paper.A4);
    SheetCamera.Trouble trouble =
        new SheetCamera.Trouble(
            22, 7, 0.012, 4200, 0.75, false, 2, -1, List.of(4), longer / 2700.0, 0.006);
    SheetDrawing drawing = SheetDrawing.of(scene.layout, SheetCodes.of(scene.layout.page()));
    Files.write(
        folder.resolve("sheet.pdf"), PagePdf.of("Swatch sheet", List.of(SheetPrint.page(drawing))));
    ImageIO.write(SheetScene.print(drawing), "png", folder.resolve("sheet.png").toFile());
    Files.write(
        folder.resolve("sheet-photo.jpg"),
        new SheetCamera(scene, trouble, longer * 3 / 4, longer, random).shoot());
  }
}
