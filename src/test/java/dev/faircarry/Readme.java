package dev.faircarry;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The README, taken apart. */
final class Readme {
  private static final Pattern BLOCK = Pattern.compile("(?s)```([a-z]+)\n(.*?)```");
  private static final Pattern WORD = Pattern.compile("(?s)'([^']*)'|(\\S+)");

  final String text;

  Readme() {
    try {
      text = Files.readString(Path.of("README.md"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Blocks of code of a language. */
  List<String> blocks(String language) {
    List<String> blocks = new ArrayList<>();
    Matcher matcher = BLOCK.matcher(text);
    while (matcher.find()) {
      if (matcher.group(1).equals(language)) {
        blocks.add(matcher.group(2).strip());
      }
    }
    return blocks;
  }

  /** What a shell would make of a command: words, single quotes taken off. */
  static List<String> words(String command) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(command);
    while (matcher.find()) {
      words.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
    }
    return words;
  }

  /** Cells of the rows of the table whose head begins with a cell. */
  List<List<String>> table(String firstHead) {
    List<List<String>> rows = new ArrayList<>();
    boolean inside = false;
    for (String line : text.lines().toList()) {
      if (line.startsWith("| " + firstHead + " |")) {
        inside = true;
      } else if (!line.startsWith("|")) {
        inside = false;
      } else if (inside && !line.startsWith("| ---")) {
        rows.add(
            List.of(line.substring(1, line.length() - 1).split("\\|", -1)).stream()
                .map(String::strip)
                .toList());
      }
    }
    return rows;
  }
}
