package org.wattwright.conductor;

import java.util.List;
import java.util.function.Function;
import org.wattwright.check.Basis;
import org.wattwright.check.Source;
import org.wattwright.internal.ResourceTable;

/** Rows of this package's own tables; a row from memory says so, and counts as an estimate. */
final class PublishedRows {
  private PublishedRows() {}

  static <T> List<T> read(String resource, Function<ResourceTable.Row, T> reader) {
    return ResourceTable.read(PublishedRows.class, resource).rows().stream().map(reader).toList();
  }

  static Source source(ResourceTable.Row row) {
    return Source.standard(row.text("source"), isFromMemory(row) ? "from memory" : "");
  }

  static Basis basis(ResourceTable.Row row) {
    return isFromMemory(row) ? Basis.ESTIMATED : Basis.DATA_SHEET;
  }

  private static boolean isFromMemory(ResourceTable.Row row) {
    return row.text("obtained").equals("from memory");
  }
}
