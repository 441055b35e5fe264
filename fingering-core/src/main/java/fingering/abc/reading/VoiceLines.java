package fingering.abc.reading;

import com.google.common.collect.ImmutableList;
import fingering.abc.syntax.FieldWord;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.Repairs;
import fingering.abc.syntax.SourceLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Divides the body of a tune among its voices: a field V: switches to a voice, on its own line or
 * within one (ABC 2.1, section 'Multiple voices').
 */
final class VoiceLines {
  private static final Pattern INLINE = Pattern.compile("\\[V:([^\\]]*)\\]");

  /** The name of the voice of a tune without fields V:. */
  static final String ONLY = "";

  private final Repairs repairs;

  /** The first field of each voice that says more than its name. */
  private final Map<String, List<FieldWord>> words = new LinkedHashMap<>();

  private final Map<String, List<SourceLine>> lines = new LinkedHashMap<>();

  /** The lines that come before all music and apply to every voice. */
  private final List<SourceLine> shared = new ArrayList<>();

  private Optional<String> current = Optional.empty();

  VoiceLines(Repairs repairs) {
    this.repairs = repairs;
  }

  /**
   * Reads a field V:, and switches to its voice.
   *
   * @return whether it is the first that describes the voice, or says nothing more than its name
   */
  boolean field(LineCursor content) {
    List<FieldWord> all = FieldWord.all(content, repairs);
    String id = all.isEmpty() ? ONLY : all.get(0).toString();
    current = Optional.of(id);
    lines.computeIfAbsent(id, any -> new ArrayList<>());
    List<FieldWord> known = words.getOrDefault(id, List.of());
    if (known.size() <= 1) {
      words.put(id, all);
      return true;
    }
    return all.size() <= 1;
  }

  /** Switches back to the first voice, if there is one. */
  void first() {
    current = lines.keySet().stream().findFirst();
  }

  /** Adds a line of the body. */
  void add(SourceLine line) {
    if (line.field() && line.letter() == 'V') {
      if (!field(line.content())) {
        put(line);
      }
    } else if (line.field() || line.comment()) {
      put(line);
    } else {
      music(line.code());
    }
  }

  private void music(SourceLine line) {
    Matcher switches = INLINE.matcher(line.text());
    int from = 0;
    while (switches.find()) {
      part(line, from, switches.start());
      SourceLine field = line.part(switches.start() + 1, switches.end() - 1);
      if (!field(field.content())) {
        put(field);
      }
      from = switches.end();
    }
    part(line, from, line.text().length());
  }

  private void part(SourceLine line, int from, int to) {
    if (line.text().substring(from, to).isBlank()) {
      return;
    }
    if (current.isEmpty()) {
      current = Optional.of(ONLY);
      lines.computeIfAbsent(ONLY, any -> new ArrayList<>());
    }
    put(from == 0 && to == line.text().length() ? line : line.part(from, to));
  }

  private void put(SourceLine line) {
    current.ifPresentOrElse(
        id -> lines.computeIfAbsent(id, any -> new ArrayList<>()).add(line),
        () -> shared.add(line));
  }

  /** Returns the names of the voices, in order of their first field. */
  ImmutableList<String> ids() {
    return lines.isEmpty() ? ImmutableList.of(ONLY) : ImmutableList.copyOf(lines.keySet());
  }

  /** Returns the words of the field that describes a voice, its name first. */
  List<FieldWord> words(String id) {
    return words.getOrDefault(id, List.of());
  }

  /** Returns the lines of a voice. */
  ImmutableList<SourceLine> lines(String id) {
    return ImmutableList.<SourceLine>builder()
        .addAll(shared)
        .addAll(lines.getOrDefault(id, List.of()))
        .build();
  }
}
