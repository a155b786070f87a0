package org.wattwright.conversion;

/**
 * Writes the blocks of a calculation sheet in one format; implement it for a format of your own and
 * hand it to {@link Block#accept}.
 */
public interface BlockWriter {
  /**
   * Writes a paragraph.
   *
   * @param paragraph the block
   */
  void paragraph(Paragraph paragraph);

  /**
   * Writes a list.
   *
   * @param list the block
   */
  void bulletList(BulletList list);

  /**
   * Writes cautions.
   *
   * @param cautions the block
   */
  void cautions(Cautions cautions);

  /**
   * Writes a table of texts.
   *
   * @param table the block
   */
  void dataTable(DataTable table);

  /**
   * Writes the working of a calculation.
   *
   * @param working the block
   */
  void working(Working working);

  /**
   * Writes checks.
   *
   * @param checks the block
   */
  void checkList(CheckList checks);

  /**
   * Writes a figure.
   *
   * @param drawing the block
   */
  void drawing(Drawing drawing);
}
