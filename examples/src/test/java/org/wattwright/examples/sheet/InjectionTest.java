package org.wattwright.examples.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.conversion.BulletList;
import org.wattwright.conversion.CalculationSheet;
import org.wattwright.conversion.Cautions;
import org.wattwright.conversion.CheckList;
import org.wattwright.conversion.DataTable;
import org.wattwright.conversion.Drawing;
import org.wattwright.conversion.Paragraph;
import org.wattwright.conversion.Section;
import org.wattwright.conversion.Working;

/** Text from input in every kind of block: it may show, but it may not become markup. */
class InjectionTest {
  private static final String SVG = "<svg xmlns=\"http://www.w3.org/2000/svg\"></svg>";

  static Stream<String> texts() {
    return Stream.of(
        "<script>alert(1)</script>",
        "</td></tr></table><img src=x onerror=alert(1)>",
        "\"><svg onload=alert(1)>",
        "' onmouseover='alert(1)",
        "&lt;script&gt;",
        "a | b | c",
        "=cmd|' /C calc'!A0",
        "[click](javascript:alert(1))",
        "![x](http://example.invalid/x.png)",
        "`code` *bold* _it_ ~~gone~~",
        "# heading",
        "line one\n# heading\n\n| a |",
        "--- ",
        "1. list",
        "\u202etxt.exe\u0007\u001b[31m\ud800");
  }

  private static CalculationSheet sheetWith(String text) {
    Worksheet.Recording working = Worksheet.record(text);
    working
        .step("U", text)
        .formula(text)
        .with("x", Figure.number(2))
        .source(Source.dataSheet(text))
        .gives(Figure.number(1));
    Check check =
        Check.named("a.b", text)
            .source(Source.requirement(text))
            .note(text)
            .atMost(Figure.number(1), Figure.number(2));
    Check open = Check.named("a.c", text).source(Source.PHYSICS).notChecked(text);
    Section section =
        Section.of(text)
            .with(
                new Paragraph(text),
                new BulletList(List.of(text)),
                new Cautions(List.of(text)),
                DataTable.of(text, text, ">" + text).row(text, text),
                new Working(working.toWorksheet()),
                new CheckList(List.of(check, open)),
                new Drawing(SVG, text, text))
            .withParts(Section.of(text).with(new Paragraph(text)));
    return new CalculationSheet(text, text, List.of(section));
  }

  /** The page with that text has exactly the elements of the page with a harmless one. */
  @ParameterizedTest
  @MethodSource("texts")
  void addsNoElementToThePage(String text) {
    assertThat(tags(HtmlSheet.render(sheetWith(text))))
        .isEqualTo(tags(HtmlSheet.render(sheetWith("harmless"))));
  }

  @ParameterizedTest
  @MethodSource("texts")
  void runsNothingInThePage(String text) {
    String page = HtmlSheet.render(sheetWith(text));
    assertThat(page).doesNotContain("<script").doesNotContain("<img").doesNotContain("<svg on");
    assertThat(page).doesNotContainPattern("[\\p{Cc}&&[^\\n]]").doesNotContain("\u202e");
    assertThat(page.codePoints().filter(c -> c >= 0xD800 && c <= 0xDFFF)).isEmpty();
  }

  private static List<String> tags(String page) {
    return Pattern.compile("</?[a-zA-Z][a-zA-Z0-9]*")
        .matcher(page)
        .results()
        .map(MatchResult::group)
        .filter(tag -> !tag.equals("<wbr"))
        .toList();
  }
}
