package org.wattwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wattwright.units.InvalidInputException;

class MarkdownTableTest {
  @Test
  void columnsAreAligned() {
    assertThat(MarkdownTable.withColumns("A", "Long heading").row("cell", "1").toText())
        .isEqualTo(
            """
            | A    | Long heading |
            | ---- | ------------ |
            | cell | 1            |
            """);
  }

  @Test
  void longCellDoesNotWidenItsColumn() {
    String text =
        MarkdownTable.withColumns("A", "B").row("x".repeat(100), "1").row("y", "2").toText();
    assertThat(text.lines().toList().get(1)).isEqualTo("| " + "-".repeat(48) + " | --- |");
    assertThat(text.lines().toList().get(2)).startsWith("| " + "x".repeat(100) + " | 1 ");
  }

  @Test
  void tableWithoutRowsHasItsHeadings() {
    assertThat(MarkdownTable.withColumns("A").toText()).isEqualTo("| A   |\n| --- |\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '→',
      value = {
        "U_min→U_min",
        "_em_→\\_em\\_",
        "a_ b→a\\_ b",
        "*x*→\\*x\\*",
        "a|b→a\\|b",
        "`x`→\\`x\\`",
        "[x](y)→\\[x\\](y)",
        "a\\b→a\\\\b",
        "~~x~~→\\~\\~x\\~\\~",
        "# x→\\# x",
        "$x$→\\$x\\$",
        "3 < 4 & 5 > 2→3 < 4 & 5 > 2",
        "<b>→&lt;b&gt;",
        "a<b→a&lt;b",
        "R&D→R&amp;D",
        "> x→&gt; x",
        "x &→x &amp;",
        "a &amp b→a &amp;amp b",
        "√(R₀·P) ≤ 5 Ω→√(R₀·P) ≤ 5 Ω"
      })
  void markupIsEscapedAndPlainTextIsNot(String text, String escaped) {
    assertThat(MarkdownTable.escaped(text)).isEqualTo(escaped);
  }

  @Test
  void lineBreaksAndTurnedDirectionsBecomeSpaces() {
    assertThat(MarkdownTable.escaped("a\r\nb\tc\u0000d")).isEqualTo("a  b c d");
    assertThat(MarkdownTable.escaped("a\u2028b\u2029c\u0085d")).isEqualTo("a b c d");
    assertThat(MarkdownTable.escaped("a\u202Eb\u2066c\u202Ad\u2069e")).isEqualTo("a b c d e");
    assertThat(MarkdownTable.escaped("a\uD800b")).isEqualTo("a b");
  }

  @Test
  void otherCharactersStay() {
    assertThat(MarkdownTable.escaped("😀 a\u200Db \u2065 \u206A é"))
        .isEqualTo("😀 a\u200Db \u2065 \u206A é");
  }

  @Test
  void rejectsRowsOfAnotherLength() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> MarkdownTable.withColumns("A", "B").row("1"))
        .withMessage("MarkdownTable.row must be 2 cells, but was 1");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> MarkdownTable.withColumns())
        .withMessage(
            "MarkdownTable.columns must be a list with at least one element, but was empty");
  }
}
