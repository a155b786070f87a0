package org.wattwright.examples.job;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A whole text file of bounded size, UTF-8, with or without a byte order mark. */
final class TextFile {
  /** Far above any real job file; keeps memory bounded. */
  static final int MOST_BYTES = 8_000_000;

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private TextFile() {}

  static String read(Path file) {
    String name = nameOf(file);
    if (!Files.isRegularFile(file)) {
      throw JobFileException.of(
          name + (Files.exists(file) ? " is not a file" : " is missing in " + folderOf(file)));
    }
    String text = decoded(name, bytesOf(file, name));
    return text.isEmpty() || text.charAt(0) != BYTE_ORDER_MARK ? text : text.substring(1);
  }

  static String nameOf(Path file) {
    return Quoted.oneLine(String.valueOf(file.getFileName()));
  }

  private static String folderOf(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    return folder == null ? "the job folder" : folder.toString();
  }

  private static byte[] bytesOf(Path file, String name) {
    try (var stream = Files.newInputStream(file)) {
      byte[] bytes = stream.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw JobFileException.of(name + " is larger than " + MOST_BYTES / 1_000_000 + " MB");
      }
      return bytes;
    } catch (IOException e) {
      throw JobFileException.of(name + " cannot be read: " + e.getMessage());
    }
  }

  private static String decoded(String name, byte[] bytes) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    CoderResult result = decoder.decode(in, out, true);
    out.flip();
    String text = out.toString();
    if (result.isError()) {
      throw at(name, text, "not UTF-8 text (save the file as UTF-8)");
    }
    int nul = text.indexOf('\0');
    if (nul >= 0) {
      throw at(name, text.substring(0, nul), "holds a zero byte: not UTF-8 text");
    }
    return text;
  }

  private static JobFileException at(String name, String before, String message) {
    long line = 1 + before.chars().filter(c -> c == '\n').count();
    return new Origin(name, line).error(message);
  }
}
