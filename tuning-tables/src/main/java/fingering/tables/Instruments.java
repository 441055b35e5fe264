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
 * The instruments of the tables, their tunings and sizes, and the signs by which the instrument of
 * a part is recognised. Immutable.
 */
public final class Instruments {
  private static final Pattern NOT_LETTERS = Pattern.compile("[^a-z]+");
  private static final Pattern QUALIFIER =
      Pattern.compile("(?<= )(i{1,3}|iv|solo|soli|string|strings|section|tutti|div)(?= )");
  private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");

  private final ImmutableMap<String, Instrument> byId;
  private final ImmutableListMultimap<String, Tuning> tunings;
  private final ImmutableListMultimap<String, Size> sizes;
  private final ImmutableMap<String, String> words;
  private final ImmutableMap<String, String> wordsAlone;
  private final ImmutableSet<String> conjunctions;
  private final ImmutableSet<String> otherInstruments;
  private final ImmutableSet<String> otherFamilies;
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
    conjunctions = words(signs, "and");
    otherInstruments = words(signs, "other");
    otherFamilies = words(signs, "family");
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
        throw row.error("'" + row.text(0) + "' appears twice; delete one of the rows");
      }
    }
    return ImmutableSet.copyOf(ids);
  }

  private Instrument instrument(Table.Row row) {
    String id = row.text(0);
    Tuning tuning =
        named(tunings.get(id), Tuning::name, Tuning.STANDARD)
            .orElseThrow(() -> row.error("'" + id + "' has no standard tuning in tunings.table"));
    Size size =
        named(sizes.get(id), Size::name, row.text(3))
            .orElseThrow(
                () -> row.error("'" + id + "' has no size '" + row.text(3) + "' in sizes.table"));
    if (!size.equals(new Size(id, size.name(), row.millimetres(4), row.millimetres(6)))) {
      throw row.error(
          "string length and reach differ from those of size '%s' of '%s' in sizes.table"
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
      throw row.error(e);
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

  /** The tunings of an instrument, the standard one first. */
  public ImmutableList<Tuning> tunings(Instrument instrument) {
    return tunings.get(instrument.id());
  }

  /** The sizes of an instrument, the largest first. */
  public ImmutableList<Size> sizes(Instrument instrument) {
    return sizes.get(instrument.id());
  }

  /**
   * The tuning of an instrument with that name. Case does not matter.
   *
   * @throws FingeringException if there is no such tuning; the message lists those there are
   */
  public Tuning tuning(Instrument instrument, String name) {
    String wanted = name.strip();
    return named(tunings(instrument), Tuning::name, wanted.toLowerCase(Locale.ROOT))
        .orElseThrow(() -> noTuning(instrument, wanted));
  }

  /** The instrument with that id, which must be in the tables. */
  private Instrument byId(String id) {
    return Objects.requireNonNull(byId.get(id), id);
  }

  private FingeringException noTuning(Instrument instrument, String wanted) {
    String known = tunings(instrument).stream().map(Tuning::name).collect(Collectors.joining(", "));
    String others =
        tunings.values().stream()
            .filter(tuning -> tuning.name().equals(wanted.toLowerCase(Locale.ROOT)))
            .map(tuning -> "the " + byId(tuning.instrument()).nameInSentence())
            .collect(Collectors.joining(" and "));
    return new FingeringException(
        others.isEmpty()
            ? "no tuning '%s' for the %s; choose %s"
                .formatted(wanted, instrument.nameInSentence(), known)
            : "the tuning '%s' is for %s, not for the %s, whose tunings are %s"
                .formatted(wanted, others, instrument.nameInSentence(), known));
  }

  /**
   * The size with that name, or with a string of that length, such as {@code 610mm}. The length is
   * 0.5 to 1.5 times that of the given instrument. The reach for a length is interpolated between
   * the nearest two sizes. Below the smallest size it is proportional to the string length; above
   * the largest it is constant.
   *
   * @throws FingeringException if there is no such size, or if the length is out of bounds; the
   *     message lists the choices
   */
  public Size size(Instrument instrument, String name) {
    String wanted = name.strip();
    return named(sizes(instrument), Size::name, wanted)
        .or(() -> Sizes.ofLength(instrument, wanted, sizes(instrument)))
        .orElseThrow(
            () ->
                new FingeringException(
                    "no size '%s' of the %s; choose %s, or a string length such as %.0fmm"
                        .formatted(
                            wanted,
                            instrument.nameInSentence(),
                            sizes(instrument).stream()
                                .map(Size::name)
                                .collect(Collectors.joining(", ")),
                            instrument.stringLength())));
  }

  /**
   * The instrument with that name, in English, Italian, German or French.
   *
   * @throws FingeringException if there is none; the message lists the instruments
   */
  public Instrument named(String name) {
    return byPartName(name)
        .orElseThrow(
            () ->
                new FingeringException(
                    "no instrument '" + name + "'; choose " + String.join(", ", byId.keySet())));
  }

  /**
   * The instrument that a part name mentions, in English, Italian, German or French; the first if
   * it mentions several. A part for cello and bass counts as a cello part, because only the cello
   * plays it at written pitch (common practice).
   */
  public Optional<Instrument> byPartName(String partName) {
    ImmutableList<Instrument> named = allInPartName(partName);
    return named.stream()
        .filter(one -> one.kind() == HandKind.CELLO)
        .filter(one -> named.stream().anyMatch(other -> other.kind() == HandKind.BASS))
        .findFirst()
        .or(() -> named.stream().findFirst());
  }

  /** The instruments that a part name mentions, in its order, each once. */
  public ImmutableList<Instrument> allInPartName(String partName) {
    String name = plain(partName);
    // Abbreviations and 'bass' count only if the name contains no other words.
    Optional<ImmutableList<String>> signsOnly = signs(QUALIFIER.matcher(name).replaceAll(" "));
    return signsOnly.orElseGet(() -> wordsIn(name)).stream()
        .distinct()
        .map(this::byId)
        .collect(ImmutableList.toImmutableList());
  }

  /** Whether a part name mentions a voice, or an instrument that is not a bowed string. */
  public boolean namesOtherInstrument(String partName) {
    String name = plain(partName);
    return otherInstruments.stream().anyMatch(word -> name.contains(" " + word + " "));
  }

  /** The words of a name in lower case, without accents, with blanks around each. */
  private static String plain(String partName) {
    String plain =
        ACCENTS
            .matcher(
                Normalizer.normalize(
                    partName.toLowerCase(Locale.ROOT).replace("ß", "ss"), Normalizer.Form.NFD))
            .replaceAll("");
    return " " + NOT_LETTERS.matcher(plain).replaceAll(" ").strip() + " ";
  }

  /**
   * The ids that a name mentions if it consists of signs and conjunctions only; empty if it
   * contains anything else.
   */
  private Optional<ImmutableList<String>> signs(String name) {
    ImmutableList.Builder<String> ids = ImmutableList.builder();
    String left = name.strip();
    while (!left.isEmpty()) {
      String rest = left + " ";
      Optional<String> sign =
          Stream.of(wordsAlone.keySet(), words.keySet(), conjunctions)
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

  /** The ids of the words in a name; the longest match counts. */
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

  /** The instrument of a MusicXML standard sound, for example {@code strings.viola}. */
  public Optional<Instrument> bySound(String sound) {
    return Optional.ofNullable(sounds.get(sound)).map(byId::get);
  }

  /**
   * Whether a MusicXML standard sound belongs to a family without bowed strings, for example {@code
   * wind.flutes}.
   */
  public boolean isOtherSound(String sound) {
    return otherFamilies.stream().anyMatch(family -> sound.startsWith(family + "."));
  }

  /**
   * The instrument that the first clef of a part suggests.
   *
   * @param signAndLine sign and line of the clef as in MusicXML, for example {@code C3}
   */
  public Optional<Instrument> byClef(String signAndLine) {
    return Optional.ofNullable(clefs.get(signAndLine)).map(byId::get);
  }
}
