package fingering.tables;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import java.text.Normalizer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Names of notes, keys and scales in a language: {@code H-Dur}, {@code ré bémol majeur}. Case,
 * accents and hyphens do not matter. Source: {@code note-names.table}, common practice.
 */
public final class NoteNames {
  /** The largest alteration that has a name: double sharps and double flats. */
  public static final int MAX_ALTERATION = 2;

  private static final Splitter NAMES = Splitter.on(',').trimResults();
  private static final Splitter BLANKS = Splitter.on(' ').omitEmptyStrings();
  private static final Pattern ACCENTS = Pattern.compile("\\p{M}");
  private static final Pattern SEPARATORS = Pattern.compile("[-\\s]+");
  private static final Pattern OCTAVE = Pattern.compile("(.*?)\\s*(-?\\d{1,2})");
  private static final String NO_BLANK = "-";
  private static final String ENGLISH = "en";

  /** Examples for error messages, by language. */
  private static final ImmutableMap<String, String> EXAMPLES =
      ImmutableMap.of(
          ENGLISH,
          "'B flat', 'D major'",
          "de",
          "'B', 'Fis', 'H-Dur', 'g-Moll harmonisch'",
          "fr",
          "'si bémol', 'ré majeur', 'sol mineur harmonique'",
          "it",
          "'si bemolle', 're maggiore', 'sol minore armonica'",
          "es",
          "'si bemol', 're mayor', 'sol menor armónica'");

  /**
   * A note without an octave.
   *
   * @param letter the letter
   * @param alter semitones by which it is raised, negative if lowered, -2 to 2
   */
  public record Note(Letter letter, int alter) {
    /**
     * Checks the alteration.
     *
     * @throws FingeringException if it is not -2 to 2
     */
    public Note {
      if (Math.abs(alter) > MAX_ALTERATION) {
        throw new FingeringException("alteration " + alter + " is not between -2 and 2");
      }
    }

    /** The name in ASCII, as in commands and files: {@code F#}, {@code Bb}. */
    @Override
    public String toString() {
      return letter + (alter < 0 ? "b".repeat(-alter) : "#".repeat(alter));
    }
  }

  private final String language;
  private final ImmutableMap<String, Note> notes;
  private final ImmutableMap<Note, String> names;
  private final ImmutableMap<String, String> words;
  private final ImmutableSet<String> ignored;

  private NoteNames(String language, List<Table.Row> rows) {
    this.language = language;
    Map<String, Note> read = new LinkedHashMap<>();
    Map<Note, String> written = new LinkedHashMap<>();
    for (Table.Row row : of(rows, "note")) {
      Pitch pitch = Pitch.parse(row.text(2) + "4");
      put(new Note(pitch.letter(), pitch.alter()), names(row), read, written, row);
    }
    for (Table.Row row : of(rows, "letter")) {
      Letter letter = Letter.valueOf(row.text(2));
      put(new Note(letter, 0), names(row), read, written, row);
      for (Table.Row sign : of(rows, "sign")) {
        Note altered = new Note(letter, sign.integer(2));
        put(altered, joined(names(row), names(sign)), read, written, sign);
      }
    }
    notes = ImmutableMap.copyOf(read);
    names = ImmutableMap.copyOf(written);
    ImmutableMap.Builder<String, String> kinds = ImmutableMap.builder();
    for (Table.Row row : of(rows, "word")) {
      names(row).forEach(word -> kinds.put(normalized(word), row.text(2)));
    }
    words = kinds.buildOrThrow();
    ignored =
        of(rows, "drop").stream()
            .flatMap(row -> names(row).stream())
            .map(NoteNames::normalized)
            .collect(ImmutableSet.toImmutableSet());
  }

  private static List<Table.Row> of(List<Table.Row> rows, String kind) {
    return rows.stream().filter(row -> row.text(1).equals(kind)).toList();
  }

  private static List<String> names(Table.Row row) {
    return NAMES.splitToList(row.text(3));
  }

  /** The names of a letter with an accidental: each letter name with each accidental name. */
  private static List<String> joined(List<String> letters, List<String> signs) {
    return letters.stream()
        .flatMap(letter -> signs.stream().map(sign -> letter + ending(sign)))
        .toList();
  }

  private static String ending(String sign) {
    return sign.startsWith(NO_BLANK) ? sign.substring(NO_BLANK.length()) : " " + sign;
  }

  private static void put(
      Note note,
      List<String> variants,
      Map<String, Note> read,
      Map<Note, String> written,
      Table.Row row) {
    for (String name : variants) {
      Note other = read.putIfAbsent(normalized(name), note);
      if (other != null && !other.equals(note)) {
        throw row.error("'" + name + "' is " + other + " and " + note);
      }
    }
    written.putIfAbsent(note, variants.get(0));
  }

  /** The names in all languages of the table, English first. */
  public static ImmutableList<NoteNames> all() {
    return rows().entrySet().stream()
        .map(entry -> new NoteNames(entry.getKey(), entry.getValue()))
        .collect(ImmutableList.toImmutableList());
  }

  private static Map<String, List<Table.Row>> rows() {
    return Table.read("note-names.table", 5).rows().stream()
        .collect(
            Collectors.groupingBy(row -> row.text(0), LinkedHashMap::new, Collectors.toList()));
  }

  /**
   * The names in a language.
   *
   * @param language the language code: en, de, fr, it, es (ISO 639-1)
   * @throws FingeringException if the table does not have the language
   */
  public static NoteNames parse(String language) {
    Map<String, List<Table.Row>> rows = rows();
    String wanted = language.strip().toLowerCase(Locale.ROOT);
    if (!rows.containsKey(wanted)) {
      throw new FingeringException(
          "no note names for language '%s'; choose %s"
              .formatted(language, String.join(", ", rows.keySet())));
    }
    return new NoteNames(wanted, rows.get(wanted));
  }

  /** Lower case without accents, with ASCII accidentals and single blanks. */
  private static String normalized(String text) {
    String signs = text.strip().replace('♯', '#').replace('♭', 'b').replace("\u00df", "ss");
    String bare = ACCENTS.matcher(Normalizer.normalize(signs, Normalizer.Form.NFD)).replaceAll("");
    return SEPARATORS.matcher(bare.toLowerCase(Locale.ROOT)).replaceAll(" ");
  }

  /**
   * The note with that name.
   *
   * @throws FingeringException if the text is not a note in this language
   */
  public Note note(String text) {
    return Optional.ofNullable(notes.get(normalized(text)))
        .orElseThrow(() -> unknown(text, "note"));
  }

  /**
   * The usual name of a note, which {@link #note} reads.
   *
   * @throws FingeringException if the note has no name in this language
   */
  public String name(Note note) {
    return Optional.ofNullable(names.get(note))
        .orElseThrow(
            () -> new FingeringException(note + " has no name in language '" + language + "'"));
  }

  /**
   * Translates a pitch, or a note without an octave, into English: {@code H3} to {@code B3}. A
   * number alone is returned as it is.
   *
   * @throws FingeringException if the text is not a pitch or note in this language
   */
  public String pitch(String text) {
    Matcher octave = OCTAVE.matcher(text.strip());
    return octave.matches()
        ? octave.group(1).isEmpty() ? text.strip() : note(octave.group(1)) + octave.group(2)
        : note(text).toString();
  }

  /**
   * Translates a scale or key into English: {@code H-Dur} to {@code B major}.
   *
   * @throws FingeringException if the text is not a scale or key in this language
   */
  public String scale(String text) {
    List<String> typed = BLANKS.splitToList(normalized(text));
    // The longest name counts; of equally long ones the last: 'septième de dominante sur la bémol'.
    for (int length = typed.size() - 1; length > 0; length--) {
      for (int from = typed.size() - length; from >= 0; from--) {
        Note note = notes.get(String.join(" ", typed.subList(from, from + length)));
        String kind = words.get(without(typed, from, length));
        if (note != null && kind != null) {
          return note + " " + kind;
        }
      }
    }
    throw unknown(text, "scale or key");
  }

  private String without(List<String> typed, int from, int length) {
    StringBuilder rest = new StringBuilder();
    for (int i = 0; i < typed.size(); i++) {
      boolean kept = (i < from || i >= from + length) && !ignored.contains(typed.get(i));
      rest.append(kept ? (rest.length() == 0 ? "" : " ") + typed.get(i) : "");
    }
    return rest.toString();
  }

  /** Whether the text is a scale or key in this language. */
  public boolean isScale(String text) {
    try {
      return !scale(text).isEmpty();
    } catch (FingeringException e) {
      return false;
    }
  }

  private FingeringException unknown(String text, String what) {
    return new FingeringException(
        "'%s' is not a %s in note names '%s'; write for example %s"
            .formatted(text, what, language, EXAMPLES.get(language)));
  }

  /** The language code, which {@link #parse} reads. */
  @Override
  public String toString() {
    return language;
  }
}
