package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlainTextTest {
  @ParameterizedTest
  @ValueSource(strings = {"", "plain", "3.2 mΩ · 35 mm² – “ok”", "ελληνικά", "電池", "🔋 full", "é"})
  void keepsWhatCanBeRead(String text) {
    assertThat(PlainText.clean(text)).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(chars = {'\n', '\r', '\t', '\0', '\u0007', '\u001b', '\u0085', '\u2028', '\u2029'})
  void turnsControlCharactersIntoSpaces(char control) {
    assertThat(PlainText.clean("a" + control + "b")).isEqualTo("a b");
  }

  @ParameterizedTest
  @ValueSource(chars = {'\u00ad', '\u200b', '\u200f', '\u202e', '\u2066', '\ufeff'})
  void dropsWhatCannotBeSeen(char invisible) {
    assertThat(PlainText.clean("a" + invisible + "b")).isEqualTo("ab");
  }

  @ParameterizedTest
  @CsvSource({"D800", "DBFF", "DC00", "DFFF"})
  void replacesHalfACharacter(String hex) {
    char half = (char) Integer.parseInt(hex, 16);
    assertThat(PlainText.clean("a" + half + "b")).isEqualTo("a\uFFFDb");
  }

  @Test
  void stripsBothEnds() {
    assertThat(PlainText.clean(" \n a b \t")).isEqualTo("a b");
    assertThat(PlainText.clean("\u200b \u200b")).isEmpty();
  }
}
