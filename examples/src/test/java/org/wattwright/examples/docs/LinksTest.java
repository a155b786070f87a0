package org.wattwright.examples.docs;

import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every relative link in the Markdown pages leads to a file, and every page can be found. */
class LinksTest {
  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
  private static final Path DOCS = ROOT.resolve("docs");
  private static final Path PACKAGES = ROOT.resolve("core/src/main/java/org/wattwright");
  private static final Parser PARSER =
      Parser.builder().extensions(List.of(TablesExtension.create())).build();

  /** What was built is no page of ours. */
  private static final Set<String> NOT_OURS = Set.of("target", ".git");

  static Stream<Path> pages() throws IOException {
    try (Stream<Path> files = Files.walk(ROOT)) {
      List<Path> pages =
          files
              .filter(file -> file.toString().endsWith(".md") && isOurs(ROOT.relativize(file)))
              .map(ROOT::relativize)
              .sorted()
              .toList();
      return pages.stream();
    }
  }

  private static boolean isOurs(Path relative) {
    for (Path name : relative) {
      if (NOT_OURS.contains(name.toString())) {
        return false;
      }
    }
    return true;
  }

  /** The files that a page links to, as they are written there, without parts of pages. */
  private static List<String> linksOf(Path page) throws IOException {
    List<String> links = new ArrayList<>();
    PARSER
        .parse(Files.readString(page))
        .accept(
            new AbstractVisitor() {
              @Override
              public void visit(Link link) {
                links.add(link.getDestination());
                visitChildren(link);
              }

              @Override
              public void visit(Image image) {
                links.add(image.getDestination());
              }
            });
    return links.stream()
        .filter(link -> !URI.create(link).isAbsolute())
        .map(link -> link.replaceFirst("#.*", ""))
        .filter(link -> !link.isEmpty())
        .toList();
  }

  private static Set<Path> targetsOf(Path page) throws IOException {
    return linksOf(page).stream().map(link -> target(page, link)).collect(toSet());
  }

  private static Path target(Path page, String link) {
    return page.resolveSibling(link).normalize();
  }

  private static Stream<Path> docs() throws IOException {
    return pages().map(ROOT::resolve).filter(page -> page.getParent().equals(DOCS));
  }

  @Test
  void thereArePagesToLookAt() throws IOException {
    assertThat(pages())
        .contains(Path.of("README.md"), Path.of("docs/index.md"), Path.of("DEVELOPERS.md"));
    assertThat(linksOf(ROOT.resolve("README.md"))).contains("docs/index.md", "LICENSE");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void everyLinkLeadsToAFileOfTheProject(Path page) throws IOException {
    Path file = ROOT.resolve(page);
    assertThat(linksOf(file))
        .allSatisfy(link -> assertThat(target(file, link)).exists().startsWith(ROOT));
  }

  @Test
  void theIndexListsEveryPage() throws IOException {
    Path index = DOCS.resolve("index.md");
    assertThat(targetsOf(index)).containsAll(docs().filter(page -> !page.equals(index)).toList());
  }

  @Test
  void theReadmeListsThePageOfEveryPackage() throws IOException {
    List<Path> ofPackages = docs().filter(LinksTest::isAboutAPackage).toList();
    assertThat(ofPackages).isNotEmpty();
    assertThat(targetsOf(ROOT.resolve("README.md"))).containsAll(ofPackages);
  }

  /** Every exported package has a page. */
  @Test
  void everyPackageHasAPage() throws IOException {
    try (Stream<Path> packages = Files.list(PACKAGES)) {
      assertThat(packages.filter(Files::isDirectory))
          .map(folder -> folder.getFileName().toString())
          .filteredOn(name -> !name.equals("internal"))
          .isNotEmpty()
          .allSatisfy(name -> assertThat(DOCS.resolve(name + ".md")).exists());
    }
  }

  private static boolean isAboutAPackage(Path page) {
    return Files.isDirectory(PACKAGES.resolve(page.getFileName().toString().replace(".md", "")));
  }
}
