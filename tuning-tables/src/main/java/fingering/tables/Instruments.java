package fingering.tables;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.tables.Instrument.HandKind;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** The instruments that the tables know, and the signs by which a part shows its instrument. */
public final class Instruments {
  private static final Pattern NOT_LETTERS = Pattern.compile("[^a-z]+");
  private static final Pattern BESIDE =
      Pattern.compile("(?<= )(i{1,3}|iv|solo|soli|string|strings|section|tutti|div)(?= )");
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");

  private final ImmutableMap<String, Instrument> byId;
  private final ImmutableMap<String, String> words;
  private final ImmutableMap<String, String> wordsAlone;
  private final ImmutableMap<String, String> sounds;
  private final ImmutableMap<String, String> clefs;

  private Instruments(Table instruments, Table strings, Table signs) {
    ImmutableMap.Builder<String, Instrument> byId = ImmutableMap.builder();
    for (Table.Row row : instruments.rows()) {
      byId.put(row.text(0), instrument(row, strings));
    }
    this.byId = byId.buildOrThrow();
    words = signs(signs, "word");
    wordsAlone = signs(signs, "alone");
    sounds = signs(signs, "sound");
    clefs = signs(signs, "clef");
  }

  /** The instruments of the tables that come with the library. */
  public static Instruments standard() {
    return new Instruments(
        Table.read("instruments.table", 9),
        Table.read("strings.table", 4),
        Table.read("signs.table", 4));
  }

  private static Instrument instrument(Table.Row row, Table strings) {
    List<OpenString> open = new ArrayList<>();
    for (Table.Row string : strings.rows()) {
      if (string.text(0).equals(row.text(0))) {
        try {
          open.add(new OpenString(string.integer(1), Pitch.parse(string.text(2))));
        } catch (IllegalArgumentException e) {
          throw string.bad(e.getMessage());
        }
      }
    }
    try {
      return new Instrument(
          row.text(0),
          row.text(1),
          HandKind.valueOf(row.text(2).toUpperCase(Locale.ROOT)),
          "standard",
          row.text(3),
          ImmutableList.copyOf(open),
          row.millimetres(4),
          row.millimetres(5),
          row.millimetres(6),
          row.integer(7));
    } catch (IllegalArgumentException e) {
      throw row.bad(e.getMessage());
    }
  }

  private ImmutableMap<String, String> signs(Table table, String kind) {
    ImmutableMap.Builder<String, String> signs = ImmutableMap.builder();
    for (Table.Row row : table.rows()) {
      if (!row.text(0).equals(kind)) {
        continue;
      }
      if (!byId.containsKey(row.text(2))) {
        throw row.bad("no instrument '" + row.text(2) + "' in instruments.table");
      }
      signs.put(row.text(1), row.text(2));
    }
    return signs.buildKeepingLast();
  }

  /** Every instrument, violin first. */
  public ImmutableList<Instrument> all() {
    return byId.values().asList();
  }

  /**
   * The instrument of that name or one of its names in another language.
   *
   * @throws IllegalArgumentException if the tables know none such
   */
  public Instrument named(String name) {
    return byPartName(name)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no instrument '" + name + "'; known are " + String.join(", ", byId.keySet())));
  }

  /** The instrument that a part's name speaks of, in English, Italian, German or French. */
  public Optional<Instrument> byPartName(String partName) {
    String plain =
        MARKS
            .matcher(
                Normalizer.normalize(
                    partName.toLowerCase(Locale.ROOT).replace("ß", "ss"), Normalizer.Form.NFD))
            .replaceAll("");
    String name = " " + NOT_LETTERS.matcher(plain).replaceAll(" ").strip() + " ";
    String alone = wordsAlone.get(BESIDE.matcher(name).replaceAll(" ").strip());
    if (alone != null) {
      return Optional.of(byId.get(alone));
    }
    // The longest word wins: 'double bass' before 'bass', 'violoncello' as a whole word.
    return words.entrySet().stream()
        .filter(sign -> name.contains(" " + sign.getKey() + " "))
        .max((a, b) -> Integer.compare(a.getKey().length(), b.getKey().length()))
        .map(sign -> byId.get(sign.getValue()));
  }

  /** The instrument of a MusicXML standard sound such as {@code strings.viola}. */
  public Optional<Instrument> bySound(String sound) {
    return Optional.ofNullable(sounds.get(sound)).map(byId::get);
  }

  /** The instrument that a first clef suggests: sign and line as MusicXML names them, say C3. */
  public Optional<Instrument> byClef(String signAndLine) {
    return Optional.ofNullable(clefs.get(signAndLine)).map(byId::get);
  }
}
