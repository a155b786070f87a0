package org.wattwright.conversion;

/** One element of a section. */
public sealed interface Block
    permits Paragraph, BulletList, Cautions, DataTable, Working, CheckList, Drawing {
  /**
   * Hands this block to a writer.
   *
   * @param writer takes blocks
   */
  void accept(BlockWriter writer);
}
