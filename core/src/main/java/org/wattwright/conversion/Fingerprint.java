package org.wattwright.conversion;

import java.io.Serializable;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.wattwright.units.InvalidInputException;

/**
 * Whether two calculation sheets rest on the same inputs: SHA-256 (FIPS 180-4) over a text of them.
 *
 * <p>The text says the same on every Java machine, under every locale and on every run. {@link
 * Conversion#fingerprint()} says what is in that of a conversion.
 *
 * <pre>{@code
 * if (!drawn.fingerprint().equals(ordered.fingerprint())) {
 *   System.out.println("something was changed since the parts were ordered");
 * }
 * }</pre>
 *
 * <p>It finds changes; it is no signature. Immutable and thread-safe.
 *
 * @param hex 64 hexadecimal digits in lower case
 */
public record Fingerprint(String hex) implements Serializable {
  private static final Pattern DIGITS = Pattern.compile("[0-9a-f]{64}");
  private static final int SHORT = 12;

  /**
   * Checks the digits.
   *
   * @param hex 64 hexadecimal digits in lower case
   * @throws InvalidInputException if it is something else
   */
  public Fingerprint {
    if (!DIGITS.matcher(hex).matches()) {
      throw InvalidInputException.of(
          "Fingerprint.hex", "of 64 hexadecimal digits in lower case", '"' + hex + '"');
    }
  }

  /**
   * The fingerprint of a text.
   *
   * @param text taken as it is, as UTF-8
   * @return the fingerprint
   */
  public static Fingerprint ofText(String text) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      byte[] sum = digest.digest(text.getBytes(StandardCharsets.UTF_8));
      return new Fingerprint(HexFormat.of().formatHex(sum));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /**
   * The fingerprint of several texts, such as the files of a job; their order plays no part, their
   * names do.
   *
   * @param parts name and text of each
   * @return the fingerprint
   */
  public static Fingerprint ofParts(Map<String, String> parts) {
    StringBuilder all = new StringBuilder();
    // The lengths keep a name apart from a text that begins alike.
    new TreeMap<>(parts)
        .forEach(
            (name, text) ->
                all.append(name.length())
                    .append(' ')
                    .append(text.length())
                    .append('\n')
                    .append(name)
                    .append('\n')
                    .append(text)
                    .append('\n'));
    return ofText(all.toString());
  }

  /**
   * The first digits, in groups of four; enough to tell revisions of one job apart.
   *
   * @return for example {@code 3f2a 09c1 77be}
   */
  @Override
  public String toString() {
    return hex.substring(0, SHORT).replaceAll("(.{4})(?=.)", "$1 ");
  }
}
