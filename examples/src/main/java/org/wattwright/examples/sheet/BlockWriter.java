package org.wattwright.examples.sheet;

/** Writes blocks in one format. */
interface BlockWriter {
  void paragraph(Paragraph paragraph);

  void bulletList(BulletList list);

  void cautions(Cautions cautions);

  void dataTable(DataTable table);

  void working(Working working);

  void checkList(CheckList checks);

  void drawing(Drawing drawing);
}
