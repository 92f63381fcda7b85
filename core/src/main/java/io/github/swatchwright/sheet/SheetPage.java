package io.github.swatchwright.sheet;

import io.github.swatchwright.argument.Printable;
import io.github.swatchwright.argument.Require;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.zip.CRC32;

/**
 * What one page of a sheet is for: the paints and mixes of its fields. This is all that the printed
 * code says, and all that {@link SheetLayout#of} needs.
 *
 * @param paper its size
 * @param columns fields beside each other, 1 to 4
 * @param rows fields below each other, 1 to 12
 * @param page which page this is, from 1
 * @param pages how many pages belong together
 * @param sheet six hexadecimal digits that all pages of a sheet share
 * @param shelf six hexadecimal digits made from the shelf's name, or {@value #NO_SHELF}
 * @param medium the medium of all paints
 * @param labels what each field is for, row by row: the name of a paint, or a mix written as {@code
 *     =Titanium white:5, Red oxide:1}; at most as many as there are fields
 */
public record SheetPage(
    Paper paper,
    int columns,
    int rows,
    int page,
    int pages,
    String sheet,
    String shelf,
    Medium medium,
    List<String> labels) {

  /** Stands for no shelf. */
  public static final String NO_SHELF = "-";

  /** The most pages of a sheet. */
  public static final int MOST_PAGES = 50;

  /** What a label begins with when it is a mix. */
  public static final String MIX = "=";

  private static final int MOST_COLUMNS = 4;
  private static final int MOST_ROWS = 12;

  /** Fields of a page when nobody asks for another number. */
  private static final int USUAL_FIELDS = 18;

  /**
   * Refuses numbers out of range, labels that are empty, too long, or on two lines, and two fields
   * for one paint.
   */
  public SheetPage {
    Require.within("columns", columns, 1, MOST_COLUMNS);
    Require.within("rows", rows, 1, MOST_ROWS);
    Require.within("pages", pages, 1, MOST_PAGES);
    Require.within("page", page, 1, pages);
    labels = List.copyOf(labels);
    Require.within("the number of fields", labels.size(), 1, columns * rows);
    if (!sheet.matches("[0-9A-F]{6}")) {
      throw new IllegalArgumentException("sheet must be six hexadecimal digits");
    }
    if (!shelf.matches("[0-9A-F]{6}|-")) {
      throw new IllegalArgumentException("shelf must be six hexadecimal digits or -");
    }
    Set<String> paints = new HashSet<>();
    for (String label : labels) {
      if (!label.startsWith(MIX) && !paints.add(label)) {
        throw new IllegalArgumentException(
            "the paint " + Printable.quoted(label) + " has two fields, must have one");
      }
      if (label.isBlank()
          || label.length() > Paint.LONGEST_NAME
          || label.chars().anyMatch(Character::isISOControl)) {
        throw new IllegalArgumentException(
            "a field's label must be one line of 1 to " + Paint.LONGEST_NAME + " characters");
      }
    }
  }

  /** One page of the usual arrangement for a few acrylic paints. */
  public static SheetPage of(Paper paper, List<String> labels) {
    return pages(paper, labels, labels.size(), NO_SHELF, Medium.ACRYLIC).get(0);
  }

  /** How many fields a page has when nobody asks for another number. */
  public static int usualFields(Paper paper) {
    return paper == Paper.A5 ? USUAL_FIELDS / 3 * 2 : USUAL_FIELDS;
  }

  /**
   * The pages of a sheet.
   *
   * @param paper its size
   * @param labels one or more; see {@link SheetPage}
   * @param fields how many a page has at most, 1 to 24
   * @param shelf see {@link #shelfCode}
   * @param medium the medium of all paints
   */
  public static List<SheetPage> pages(
      Paper paper, List<String> labels, int fields, String shelf, Medium medium) {
    Require.within("fields on a page", fields, 1, 2 * MOST_ROWS);
    int columns = fields > 12 && paper != Paper.A5 ? 3 : 2;
    int rows = (fields + columns - 1) / columns;
    int pages = (labels.size() + fields - 1) / fields;
    String sheet = digits(String.join("\n", labels) + paper);
    List<SheetPage> made = new ArrayList<>();
    for (int page = 0; page < pages; page++) {
      List<String> here =
          labels.subList(page * fields, Math.min(labels.size(), (page + 1) * fields));
      made.add(new SheetPage(paper, columns, rows, page + 1, pages, sheet, shelf, medium, here));
    }
    return made;
  }

  /** Six digits that tell a shelf by its name. */
  public static String shelfCode(String shelfName) {
    return digits(shelfName);
  }

  private static String digits(String text) {
    CRC32 sum = new CRC32();
    sum.update(text.getBytes(StandardCharsets.UTF_8));
    return String.format(Locale.ROOT, "%06X", sum.getValue() & 0xFFFFFF);
  }
}
