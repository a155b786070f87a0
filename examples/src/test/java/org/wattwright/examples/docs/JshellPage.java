package org.wattwright.examples.docs;

import java.util.ArrayList;
import java.util.List;

/**
 * A Markdown page with {@code jshell} blocks, which together are one session: what is typed after
 * the prompt, and below it what jshell answers.
 */
final class JshellPage {
  static final String PROMPT = "jshell> ";
  private static final String CONTINUATION = "   ...> ";
  private static final String FENCE = "```";
  private static final String OPENING = FENCE + "jshell";

  /** Left out: line numbers of the library's source tell a reader nothing. */
  private static final String STACK_TRACE = "\\|\\s+at .*";

  private final List<String> lines;

  JshellPage(List<String> lines) {
    this.lines = lines;
  }

  /** Everything that is typed, line by line. */
  List<String> typed() {
    List<String> typed = new ArrayList<>();
    boolean inside = false;
    for (String line : lines) {
      if (line.startsWith(FENCE)) {
        inside = line.equals(OPENING);
      } else if (inside && line.startsWith(PROMPT)) {
        typed.add(line.substring(PROMPT.length()));
      } else if (inside && line.startsWith(CONTINUATION)) {
        typed.add(line.substring(CONTINUATION.length()));
      }
    }
    return typed;
  }

  /** The page as it would read with the answers of a session. */
  List<String> withAnswers(List<List<String>> exchanges) {
    List<String> out = new ArrayList<>();
    boolean inside = false;
    int next = 0;
    for (String line : lines) {
      if (line.startsWith(FENCE)) {
        inside = line.equals(OPENING);
        out.add(line);
      } else if (inside && line.startsWith(PROMPT)) {
        if (!out.get(out.size() - 1).equals(OPENING)) {
          out.add("");
        }
        out.addAll(exchanges.get(next++));
      } else if (!inside) {
        out.add(line);
      }
    }
    return out;
  }

  /** Splits a session into exchanges: the lines typed and those answered, without blank ends. */
  static List<List<String>> exchanges(String session) {
    List<List<String>> exchanges = new ArrayList<>();
    for (String line : session.lines().toList()) {
      if (line.startsWith(PROMPT)) {
        exchanges.add(new ArrayList<>());
      }
      if (!exchanges.isEmpty() && !line.matches(STACK_TRACE)) {
        exchanges.get(exchanges.size() - 1).add(line.stripTrailing());
      }
    }
    for (List<String> exchange : exchanges) {
      while (exchange.get(exchange.size() - 1).isEmpty()) {
        exchange.remove(exchange.size() - 1);
      }
    }
    return exchanges;
  }
}
