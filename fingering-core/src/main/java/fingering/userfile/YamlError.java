package fingering.userfile;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Turns an error of the YAML parser into a sentence with advice. */
final class YamlError {
  /** A place in the parser's message; the last one is the problem, the first its context. */
  private static final Pattern LINE = Pattern.compile("line (\\d+), column \\d+");

  /** A line of the form {@code key = value}, which user files do not have. */
  private static final Pattern EQUALS = Pattern.compile("\\s*([a-z][a-z-]*)\\s*=.*");

  static final String INVALID =
      "this is not valid YAML; check quotes, brackets, spaces and indentation";

  private YamlError() {}

  static UserFileException of(String file, String text, JsonProcessingException error) {
    String message = error.getOriginalMessage();
    List<Integer> lines =
        LINE.matcher(message)
            .results()
            .map((MatchResult match) -> Integer.parseInt(match.group(1)))
            .toList();
    int context =
        lines.isEmpty()
            ? error.getLocation() == null ? 1 : error.getLocation().getLineNr()
            : lines.get(0);
    int line = lines.isEmpty() ? context : lines.get(lines.size() - 1);
    if (message.contains("quoted scalar")) {
      return new FileLine(file, context)
          .refusal("a quotation mark is not closed; add the second one");
    }
    if (message.contains("parsing a flow")) {
      return new FileLine(file, context)
          .refusal("a list or bracket is not closed; check the commas and brackets");
    }
    if (EQUALS.matcher(line(text, line)).matches()) {
      return new FileLine(file, line).refusal(colon(line(text, line)));
    }
    return new FileLine(file, line).refusal(problem(message));
  }

  private static String problem(String message) {
    if (message.contains("TAB")) {
      return "a tab is used for the indentation; use spaces";
    }
    if (message.contains("mapping values are not allowed")) {
      return "a second colon, or a wrong indentation; put a text with ': ' in quotes, and begin keys"
          + " that belong together in the same column";
    }
    if (message.contains("could not find expected ':'")) {
      return "a colon is missing; write a key, a colon, a space and the value";
    }
    if (message.contains("field name")) {
      return "a key is not a single word; write a key, a colon, a space and the value";
    }
    if (message.contains("cannot start any token")) {
      return "a value begins with a sign that has a meaning in YAML; put the value in quotes";
    }
    if (message.contains("but found ':'")) {
      return "a key is missing before the colon; write one";
    }
    if (message.contains("but found ']'") || message.contains("but found '}'")) {
      return "there is one bracket too many; remove it";
    }
    if (message.contains("expected <block end>")) {
      return "the indentation is wrong; begin keys that belong together in the same column";
    }
    return INVALID;
  }

  /** Advice for a line that has an equals sign instead of a colon. */
  static String colon(String line) {
    var matcher = EQUALS.matcher(line);
    return matcher.matches()
        ? "write a colon after the key, '" + matcher.group(1) + ": ', instead of '='"
        : "";
  }

  static boolean hasEqualsSign(String line) {
    return EQUALS.matcher(line).matches();
  }

  private static String line(String text, int number) {
    return text.lines().skip(number - 1L).findFirst().orElse("");
  }
}
