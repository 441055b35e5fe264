package fingering.tables;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Multimaps;
import fingering.tables.Instrument.HandKind;
import java.text.Normalizer;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The instruments that the tables know, their tunings and sizes, and the signs by which a part
 * shows its instrument. Immutable.
 */
public final class Instruments {
  private static final Pattern NOT_LETTERS = Pattern.compile("[^a-z]+");
  private static final Pattern BESIDE =
      Pattern.compile("(?<= )(i{1,3}|iv|solo|soli|string|strings|section|tutti|div)(?= )");
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");

  private final ImmutableMap<String, Instrument> byId;
  private final ImmutableListMultimap<String, Tuning> tunings;
  private final ImmutableListMultimap<String, Size> sizes;
  private final ImmutableMap<String, String> words;
  private final ImmutableMap<String, String> wordsAlone;
  private final ImmutableSet<String> joining;
  private final ImmutableSet<String> others;
  private final ImmutableSet<String> families;
  private final ImmutableMap<String, String> sounds;
  private final ImmutableMap<String, String> clefs;

  private Instruments(Table instruments, Table tunings, Table sizes, Table signs) {
    ImmutableSet<String> ids = ids(instruments);
    this.tunings = Multimaps.index(Tunings.all(tunings, ids), Tuning::instrument);
    this.sizes = Multimaps.index(Sizes.all(sizes, ids), Size::instrument);
    byId =
        instruments.rows().stream()
            .map(this::instrument)
            .collect(ImmutableMap.toImmutableMap(Instrument::id, instrument -> instrument));
    words = signs(signs, "word");
    wordsAlone = signs(signs, "alone");
    joining = words(signs, "and");
    others = words(signs, "other");
    families = words(signs, "family");
    sounds = signs(signs, "sound");
    clefs = signs(signs, "clef");
  }

  /** The instruments of the tables that come with the library. */
  public static Instruments standard() {
    return of(
        Table.read("instruments.table", 9),
        Table.read("tunings.table", Tunings.FIELDS),
        Table.read("sizes.table", Sizes.FIELDS),
        Table.read("signs.table", 4));
  }

  /** The instruments of these tables. */
  static Instruments of(Table instruments, Table tunings, Table sizes, Table signs) {
    return new Instruments(instruments, tunings, sizes, signs);
  }

  private static ImmutableSet<String> ids(Table instruments) {
    Set<String> ids = new LinkedHashSet<>();
    for (Table.Row row : instruments.rows()) {
      if (!ids.add(row.text(0))) {
        throw row.bad("'" + row.text(0) + "' stands here a second time; keep one of them");
      }
    }
    return ImmutableSet.copyOf(ids);
  }

  private Instrument instrument(Table.Row row) {
    String id = row.text(0);
    Tuning tuning =
        named(tunings.get(id), Tuning::name, Tuning.STANDARD)
            .orElseThrow(() -> row.bad("'" + id + "' has no standard tuning in tunings.table"));
    Size size =
        named(sizes.get(id), Size::name, row.text(3))
            .orElseThrow(
                () -> row.bad("'" + id + "' has no size '" + row.text(3) + "' in sizes.table"));
    if (!size.equals(new Size(id, size.name(), row.millimetres(4), row.millimetres(6)))) {
      throw row.bad(
          "string length and reach are others than in sizes.table for the size '%s' of '%s'"
              .formatted(size.name(), id));
    }
    try {
      return new Instrument(
          id,
          row.text(1),
          HandKind.valueOf(row.text(2).toUpperCase(Locale.ROOT)),
          tuning.name(),
          size.name(),
          tuning.strings(),
          size.stringLength(),
          row.millimetres(5),
          size.reach(),
          row.integer(7));
    } catch (FingeringException e) {
      throw row.bad(e);
    }
  }

  private static <T> Optional<T> named(
      ImmutableList<T> all, Function<T, String> name, String wanted) {
    return all.stream().filter(one -> name.apply(one).equals(wanted)).findFirst();
  }

  private ImmutableMap<String, String> signs(Table table, String kind) {
    ImmutableMap.Builder<String, String> signs = ImmutableMap.builder();
    for (Table.Row row : table.rows()) {
      if (!row.text(0).equals(kind)) {
        continue;
      }
      row.refuseUnknown(2, ids());
      signs.put(row.text(1), row.text(2));
    }
    return signs.buildKeepingLast();
  }

  private static ImmutableSet<String> words(Table table, String kind) {
    return table.rows().stream()
        .filter(row -> row.text(0).equals(kind))
        .map(row -> row.text(1))
        .collect(ImmutableSet.toImmutableSet());
  }

  /** The ids of the instruments, in the order of {@link #all()}. */
  ImmutableSet<String> ids() {
    return byId.keySet();
  }

  /** Every instrument, violin first. */
  public ImmutableList<Instrument> all() {
    return byId.values().asList();
  }

  /** The tunings that the tables have for an instrument, the standard one first. */
  public ImmutableList<Tuning> tunings(Instrument instrument) {
    return tunings.get(instrument.id());
  }

  /** The sizes that the tables have of an instrument, the largest first. */
  public ImmutableList<Size> sizes(Instrument instrument) {
    return sizes.get(instrument.id());
  }

  /**
   * The tuning of that name for an instrument. Case does not matter.
   *
   * @throws FingeringException if the tables know none such; the message lists those they know
   */
  public Tuning tuning(Instrument instrument, String name) {
    String wanted = name.strip();
    return named(tunings(instrument), Tuning::name, wanted.toLowerCase(Locale.ROOT))
        .orElseThrow(() -> noTuning(instrument, wanted));
  }

  /** The instrument of an id that stands in the tables. */
  private Instrument byId(String id) {
    return Objects.requireNonNull(byId.get(id), id);
  }

  private FingeringException noTuning(Instrument instrument, String wanted) {
    String known = tunings(instrument).stream().map(Tuning::name).collect(Collectors.joining(", "));
    String others =
        tunings.values().stream()
            .filter(tuning -> tuning.name().equals(wanted.toLowerCase(Locale.ROOT)))
            .map(tuning -> "the " + byId(tuning.instrument()).spoken())
            .collect(Collectors.joining(" and "));
    return new FingeringException(
        others.isEmpty()
            ? "no tuning '%s' for the %s; known are %s"
                .formatted(wanted, instrument.spoken(), known)
            : "the tuning '%s' is for %s, not for the %s, whose tunings are %s"
                .formatted(wanted, others, instrument.spoken(), known));
  }

  /**
   * The size of that name, or with a string of that length in millimetres, such as {@code 610mm},
   * of 0.5 to 1.5 times the string of the instrument given. The reach for a length lies in
   * proportion between the sizes next to it; below the smallest size it goes with the string, and
   * above the largest it stays.
   *
   * @throws FingeringException if the tables know no such size, listing those they know, or if the
   *     length is out of bounds
   */
  public Size size(Instrument instrument, String name) {
    String wanted = name.strip();
    return named(sizes(instrument), Size::name, wanted)
        .or(() -> Sizes.ofLength(instrument, wanted, sizes(instrument)))
        .orElseThrow(
            () ->
                new FingeringException(
                    "no size '%s' of the %s; known are %s, or a string length such as %.0fmm"
                        .formatted(
                            wanted,
                            instrument.spoken(),
                            sizes(instrument).stream()
                                .map(Size::name)
                                .collect(Collectors.joining(", ")),
                            instrument.stringLength())));
  }

  /**
   * The instrument of that name or one of its names in another language.
   *
   * @throws FingeringException if the tables know none such
   */
  public Instrument named(String name) {
    return byPartName(name)
        .orElseThrow(
            () ->
                new FingeringException(
                    "no instrument '" + name + "'; known are " + String.join(", ", byId.keySet())));
  }

  /**
   * The instrument that a part's name speaks of, in English, Italian, German or French. Of several
   * it is the first; but a part for cello and bass is the cello's, who reads it at pitch (common
   * practice).
   */
  public Optional<Instrument> byPartName(String partName) {
    ImmutableList<Instrument> named = allInPartName(partName);
    return named.stream()
        .filter(one -> one.kind() == HandKind.CELLO)
        .filter(one -> named.stream().anyMatch(other -> other.kind() == HandKind.BASS))
        .findFirst()
        .or(() -> named.stream().findFirst());
  }

  /** The instruments that a part's name speaks of, in its order; none comes twice. */
  public ImmutableList<Instrument> allInPartName(String partName) {
    String name = plain(partName);
    // Abbreviations and 'bass' count only where the name says nothing else.
    Optional<ImmutableList<String>> nothingElse = signs(BESIDE.matcher(name).replaceAll(" "));
    return nothingElse.orElseGet(() -> wordsIn(name)).stream()
        .distinct()
        .map(this::byId)
        .collect(ImmutableList.toImmutableList());
  }

  /** Whether a part's name speaks of an instrument, or a voice, that is no bowed string. */
  public boolean namesAnother(String partName) {
    String name = plain(partName);
    return others.stream().anyMatch(word -> name.contains(" " + word + " "));
  }

  /** The words of a name in lower case without accents, blanks around each. */
  private static String plain(String partName) {
    String plain =
        MARKS
            .matcher(
                Normalizer.normalize(
                    partName.toLowerCase(Locale.ROOT).replace("ß", "ss"), Normalizer.Form.NFD))
            .replaceAll("");
    return " " + NOT_LETTERS.matcher(plain).replaceAll(" ").strip() + " ";
  }

  /** The ids that a name of signs and of words such as 'and' alone speaks of; empty of another. */
  private Optional<ImmutableList<String>> signs(String name) {
    ImmutableList.Builder<String> ids = ImmutableList.builder();
    String left = name.strip();
    while (!left.isEmpty()) {
      String rest = left + " ";
      Optional<String> sign =
          Stream.of(wordsAlone.keySet(), words.keySet(), joining)
              .flatMap(Set::stream)
              .filter(one -> rest.startsWith(one + " "))
              .max(Comparator.comparingInt(String::length));
      if (sign.isEmpty()) {
        return Optional.empty();
      }
      Optional.ofNullable(wordsAlone.get(sign.get()))
          .or(() -> Optional.ofNullable(words.get(sign.get())))
          .ifPresent(ids::add);
      left = left.substring(sign.get().length()).strip();
    }
    return Optional.of(ids.build());
  }

  /** The ids of the words in a name; of words that begin together the longest counts. */
  private ImmutableList<String> wordsIn(String name) {
    ImmutableList.Builder<String> ids = ImmutableList.builder();
    int at = 0;
    while (at < name.length()) {
      String rest = name.substring(at);
      Optional<String> sign =
          words.keySet().stream()
              .filter(one -> rest.startsWith(" " + one + " "))
              .max(Comparator.comparingInt(String::length));
      sign.ifPresent(one -> ids.add(Objects.requireNonNull(words.get(one))));
      at += sign.map(one -> one.length() + 1).orElse(1);
    }
    return ids.build();
  }

  /** The instrument of a MusicXML standard sound such as {@code strings.viola}. */
  public Optional<Instrument> bySound(String sound) {
    return Optional.ofNullable(sounds.get(sound)).map(byId::get);
  }

  /**
   * Whether a MusicXML standard sound is of a family without bowed strings: {@code wind.flutes}.
   */
  public boolean soundsOtherwise(String sound) {
    return families.stream().anyMatch(family -> sound.startsWith(family + "."));
  }

  /** The instrument that a first clef suggests: sign and line as MusicXML names them, say C3. */
  public Optional<Instrument> byClef(String signAndLine) {
    return Optional.ofNullable(clefs.get(signAndLine)).map(byId::get);
  }
}
