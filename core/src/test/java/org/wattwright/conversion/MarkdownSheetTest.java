package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Code;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;

/** What we write, read back by a Markdown parser that is not ours. */
class MarkdownSheetTest {
  private static final String IMPRINT =
      "Calculated with Wattwright "
          + LibraryVersion.current()
          + ", no fingerprint of the inputs taken.";

  private static final Parser PARSER =
      Parser.builder().extensions(List.of(TablesExtension.create())).build();
  private static final Drawing DRAWING = new Drawing("<svg></svg>", "Windows", "From 74 V");

  static Stream<String> texts() {
    return Stream.of(
        "<script>alert(1)</script>",
        "<b>bold</b>",
        "<!-- gone",
        "&lt;b&gt; &copy; &#60;",
        "a | b | c",
        "| --- |",
        "[click](javascript:alert(1))",
        "[x]: http://example.invalid",
        "![x](http://example.invalid/x.png)",
        "<http://example.invalid>",
        "`code` ``more`` *bold* **x** _it_ __x__ ~~gone~~",
        "*",
        "**",
        "_",
        "`",
        "\\",
        "a\\",
        "\\*",
        "# heading",
        "heading #",
        "###### x ######",
        "line one\n# heading\n\n| a |\n| --- |",
        "---",
        "***",
        "___",
        "===",
        "- - -",
        "- item",
        "+ item",
        "* item",
        "-",
        "+",
        "1. list",
        "12) list",
        "1.",
        "007) x",
        "> quote",
        ">",
        "```",
        "~~~ java",
        "    code",
        "\tcode",
        "two  \nlines",
        "ends with two spaces  ",
        "U_min and U_max",
        "3 < 4 & 5 > 2",
        "\u202etxt.exe\u0007\u001b[31m");
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
                new BulletList(List.of(text, "second")),
                new Cautions(List.of(text, "second")),
                DataTable.of(text, text, ">" + text).row(text, text),
                new Working(working.toWorksheet()),
                new CheckList(List.of(check, open)),
                new Drawing("<svg></svg>", text, text))
            .withParts(Section.of(text).with(new Paragraph(text)));
    return new CalculationSheet(text, text, List.of(section));
  }

  private static List<Node> nodes(String markdown) {
    List<Node> nodes = new ArrayList<>();
    collect(PARSER.parse(markdown), nodes);
    return nodes;
  }

  private static void collect(Node node, List<Node> nodes) {
    nodes.add(node);
    for (Node child = node.getFirstChild(); child != null; child = child.getNext()) {
      collect(child, nodes);
    }
  }

  /** Everything but the words, which the parser may cut as it likes. */
  private static List<String> structure(String markdown) {
    return nodes(markdown).stream()
        .filter(node -> !(node instanceof Text))
        .map(node -> node.getClass().getSimpleName())
        .toList();
  }

  @ParameterizedTest
  @MethodSource("texts")
  void textFromInputAddsNoMarkup(String text) {
    assertThat(structure(MarkdownSheet.render(sheetWith(text))))
        .isEqualTo(structure(MarkdownSheet.render(sheetWith("harmless"))));
  }

  /** Nothing that was written is lost. */
  @ParameterizedTest
  @MethodSource("texts")
  void textFromInputReadsAsItWasWritten(String text) {
    CalculationSheet sheet =
        new CalculationSheet("T", "", List.of(Section.of("S").with(new Paragraph(text))));
    List<Node> nodes = nodes(MarkdownSheet.render(sheet));
    assertThat(nodes)
        .noneMatch(node -> node instanceof Code)
        .noneMatch(node -> node instanceof HardLineBreak)
        .noneMatch(node -> node instanceof SoftLineBreak);
    StringBuilder words = new StringBuilder();
    nodes.stream()
        .filter(Text.class::isInstance)
        .forEach(node -> words.append(((Text) node).getLiteral()));
    assertThat(words.toString()).isEqualTo("T" + IMPRINT + "S" + PlainText.clean(text));
  }

  @Test
  void printsEveryBlock() {
    Worksheet.Recording working = Worksheet.record("Pack full");
    working
        .step("U", "pack full")
        .formula("S·u")
        .with("S", Figure.count(32))
        .gives(Figure.count(9));
    Section part = Section.of("Part").with(new Working(working.toWorksheet()));
    Section section =
        Section.of("All")
            .with(
                new Paragraph("Some words."),
                new BulletList(List.of("one", "two")),
                new Cautions(List.of("Hot.", "Heavy.")),
                DataTable.of("List", "Part", ">Mass").row("box", "3 kg"),
                DataTable.of("", "Bare"),
                DRAWING)
            .withParts(part);
    assertThat(MarkdownSheet.render(new CalculationSheet("Van", "A bakery", List.of(section))))
        .isEqualTo(
            """
            # Van

            A bakery

            %s

            ## All

            Some words.

            - one
            - two

            > - Hot.
            > - Heavy.

            **List**

            | Part | Mass |
            | ---- | ---- |
            | box  | 3 kg |

            | Bare |
            | ---- |

            *Figure: Windows* From 74 V

            ### Part

            #### Pack full

            | What      | Formula | With numbers | Result | Basis      | Source         |
            | --------- | ------- | ------------ | ------ | ---------- | -------------- |
            | pack full | U = S·u | 32 · u       | 9      | data sheet | law of physics |
            """
                .replace("%s", IMPRINT));
  }

  @Test
  void appendicesStandBehindWithLetters() {
    CalculationSheet sheet = new CalculationSheet("Van", "", List.of(Section.of("Pack")));
    for (int i = 0; i < 28; i++) {
      sheet = sheet.withAppendix(Section.of("no " + i));
    }
    assertThat(MarkdownSheet.render(sheet))
        .contains("## Pack\n\n## Appendix A: no 0\n\n## Appendix B: no 1\n")
        .contains("## Appendix Z: no 25\n\n## Appendix AA: no 26\n\n## Appendix AB: no 27\n");
  }

  @Test
  void leavesOutAnEmptySubtitle() {
    assertThat(MarkdownSheet.render(new CalculationSheet("Van", "", List.of())))
        .isEqualTo("# Van\n\n" + IMPRINT + "\n");
  }

  @Test
  void checksStandInTheirOrder() {
    Check second = Check.named("a.a", "second").source(Source.requirement("job")).notChecked("x.y");
    Check first =
        Check.named("b.b", "first")
            .source(Source.requirement("job"))
            .atMost(Figure.number(3), Figure.number(2));
    List<String> rows =
        MarkdownSheet.render(
                new CalculationSheet(
                    "Van",
                    "",
                    List.of(Section.of("C").with(new CheckList(List.of(first, second))))))
            .lines()
            .filter(line -> line.startsWith("|"))
            .toList();
    assertThat(rows).hasSize(4);
    assertThat(rows.get(2)).startsWith("| FAIL ").contains("| 3 > 2 ");
    assertThat(rows.get(3)).startsWith("| NOT CHECKED ").contains("missing: x.y");
  }
}
