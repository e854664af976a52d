package dev.faircarry.cli;

import dev.faircarry.Main;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * One command run inside the test.
 *
 * @param code the exit code
 * @param out standard output
 * @param err standard error, without the log
 */
record Run(ExitCode code, String out, String err) {

  static Run of(String... arguments) {
    return reading("", arguments);
  }

  /** With a text on standard input. */
  static Run reading(String input, String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console =
        new Console(
            new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    int number = Main.run(console, arguments);
    return new Run(
        code(number), out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  static ExitCode code(int number) {
    for (ExitCode code : ExitCode.values()) {
      if (code.number() == number) {
        return code;
      }
    }
    throw new AssertionError("no exit code " + number);
  }
}
