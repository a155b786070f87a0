package org.wattwright.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class ResourceTableTest {
  private static final ResourceTable TABLE =
      ResourceTable.read(ResourceTableTest.class, "sample-table.csv");

  private enum Letter {
    A,
    B
  }

  @Test
  void readsHeaderRowsAndQuotes() {
    assertThat(TABLE.columns()).containsExactly("name", "value [V]", "count", "source");
    assertThat(TABLE.rows()).hasSize(2);
    ResourceTable.Row first = TABLE.rows().get(0);
    assertThat(first.text("name")).isEqualTo("first");
    assertThat(first.number("value [V]")).isEqualTo(3.65);
    assertThat(first.count("count")).isEqualTo(2);
    assertThat(first.text("source")).isEqualTo("Invented, \"first\" edition");
  }

  @Test
  void stripsSpacesAndCountsEveryLine() {
    ResourceTable.Row second = TABLE.rows().get(1);
    assertThat(second.text("name")).isEqualTo("second");
    assertThat(second.number("value [V]")).isEqualTo(0.001);
    assertThat(second.count("count")).isEqualTo(-4);
    assertThat(second.line()).isEqualTo(6);
  }

  @Test
  void handsOutAWholeColumn() {
    assertThat(TABLE.numbers("value [V]")).containsExactly(3.65, 0.001);
    assertThat(TABLE).hasToString("org.wattwright.internal/sample-table.csv (2 rows)");
  }

  @Test
  void tellsEmptyCellsFromOthers() {
    ResourceTable.Row row = parse("a,b\n1,\n").rows().get(0);
    assertThat(row.isEmpty("b")).isTrue();
    assertThat(row.isEmpty("a")).isFalse();
    assertThat(parse("a,b\n1,\"\"\n").rows().get(0).isEmpty("b")).isTrue();
    assertThat(parse("a,b\n1,\" \"\"\"\n").rows().get(0).text("b")).isEqualTo("\"");
  }

  @Test
  void readsConstantsByName() {
    assertThat(parse("a\nB\n").rows().get(0).constant("a", Letter.class)).isEqualTo(Letter.B);
    rejects(
        () -> parse("a\nC\n").rows().get(0).constant("a", Letter.class),
        "t.csv line 2, column \"a\": must be one of [A, B], but was \"C\"");
  }

  @Test
  void namesResourceAndLineOfABrokenLine() {
    rejects(() -> parse("a,b\n1,2\n1\n"), "t.csv line 3: 1 cells, but the header has 2");
    rejects(() -> parse("a,b\n1,2,3\n"), "t.csv line 2: 3 cells, but the header has 2");
    rejects(() -> parse("# x\na,b\n1,\"2\n"), "t.csv line 3: a quote is not closed");
  }

  @Test
  void namesResourceLineAndColumnOfABrokenCell() {
    ResourceTable.Row row = parse("a,b,c\n1o5,NaN,2.5\n").rows().get(0);
    rejects(() -> row.number("a"), "t.csv line 2, column \"a\": must be a number, but was \"1o5\"");
    rejects(
        () -> row.number("b"),
        "t.csv line 2, column \"b\": must be a finite number, but was \"NaN\"");
    rejects(
        () -> row.count("c"),
        "t.csv line 2, column \"c\": must be a whole number, but was \"2.5\"");
    rejects(() -> row.text("d"), "t.csv: no column \"d\" in [a, b, c]");
  }

  @Test
  void namesResourceOfABrokenTable() {
    rejects(() -> parse(""), "t.csv: no rows");
    rejects(() -> parse("a,b\n# only a remark\n"), "t.csv: no rows");
    rejects(() -> parse("a,b,a\n1,2,3\n"), "t.csv: two columns of one name: [a, b, a]");
    rejects(
        () -> ResourceTable.read(ResourceTableTest.class, "none.csv"),
        "org.wattwright.internal/none.csv: no such resource");
  }

  private static ResourceTable parse(String text) {
    return ResourceTable.parse("t.csv", text);
  }

  private static void rejects(ThrowingCallable call, String message) {
    assertThatIllegalStateException().isThrownBy(call).withMessage(message);
  }
}
