package org.wattwright.examples.sheet;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;
import org.wattwright.conversion.CalculationSheet;
import org.wattwright.conversion.MarkdownSheet;

/**
 * Writes the files of a calculation sheet so that a reader finds the old ones or the new ones,
 * never half of one.
 *
 * <p>Every file is first written in full beside its final place, then moved there in one step.
 * Other files in the folder are left alone.
 */
public final class SheetFiles {
  private SheetFiles() {}

  /**
   * Writes the sheet as {@code index.html} and {@code calculation-sheet.md}.
   *
   * @param sheet the sheet
   * @param folder made if it is not there
   * @throws IOException if the folder cannot be made or written to; nothing has changed then
   */
  public static void write(CalculationSheet sheet, Path folder) throws IOException {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("index.html", HtmlSheet.render(sheet));
    texts.put("calculation-sheet.md", MarkdownSheet.render(sheet));
    Files.createDirectories(folder);
    for (String name : texts.keySet()) {
      if (Files.isDirectory(folder.resolve(name))) {
        throw new FileAlreadyExistsException(name + " is a folder");
      }
    }
    Path draft = Files.createTempDirectory(folder, ".draft-");
    try {
      for (Map.Entry<String, String> text : texts.entrySet()) {
        Files.writeString(draft.resolve(text.getKey()), text.getValue(), StandardCharsets.UTF_8);
      }
      for (String name : texts.keySet()) {
        move(draft.resolve(name), folder.resolve(name));
      }
    } finally {
      remove(draft, texts);
    }
  }

  private static void move(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  private static void remove(Path draft, Map<String, String> texts) throws IOException {
    for (String name : texts.keySet()) {
      Files.deleteIfExists(draft.resolve(name));
    }
    Files.deleteIfExists(draft);
  }
}
