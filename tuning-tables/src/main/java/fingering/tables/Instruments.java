package fingering.tables;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Multimaps;
import fingering.tables.Instrument.HandKind;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The instruments of the tables, their tunings and sizes, and the signs by which the instrument of
 * a part is recognised. Immutable.
 */
public final class Instruments {
  private static final String OTHER = "-";
  private static final Pattern PROGRAMS = Pattern.compile("(\\d{1,3})(?:-(\\d{1,3}))?");

  private final ImmutableMap<String, Instrument> byId;
  private final ImmutableListMultimap<String, Tuning> tunings;
  private final ImmutableListMultimap<String, Size> sizes;
  private final PartNames names;
  private final ImmutableMap<String, String> sounds;
  private final ImmutableSet<String> otherFamilies;
  private final ImmutableSet<String> defaultSounds;
  private final ImmutableMap<Integer, String> programs;
  private final ImmutableMap<String, String> clefs;

  private Instruments(Table instruments, Table tunings, Table sizes, Table signs) {
    ImmutableSet<String> ids = ids(instruments);
    this.tunings = Multimaps.index(Tunings.all(tunings, ids), Tuning::instrument);
    this.sizes = Multimaps.index(Sizes.all(sizes, ids), Size::instrument);
    byId =
        instruments.rows().stream()
            .map(this::instrument)
            .collect(ImmutableMap.toImmutableMap(Instrument::id, instrument -> instrument));
    names = new PartNames(signs, ids);
    sounds = PartNames.signs(signs, "sound", ids);
    otherFamilies = PartNames.words(signs, "family");
    defaultSounds = PartNames.words(signs, "default");
    programs = programs(signs, ids);
    clefs = PartNames.signs(signs, "clef", ids);
  }

  /** Reads the tables once, when they are first needed. */
  private static final class Standard {
    private static final Instruments INSTRUMENTS =
        of(
            Table.read("instruments.table", 9),
            Table.read("tunings.table", Tunings.FIELDS),
            Table.read("sizes.table", Sizes.FIELDS),
            Table.read("signs.table", 4));
  }

  /** The instruments of the tables that come with the library. */
  public static Instruments standard() {
    return Standard.INSTRUMENTS;
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

  /** The instruments of MIDI programs, or '-' for another instrument. A row may give a range. */
  private static ImmutableMap<Integer, String> programs(Table table, ImmutableSet<String> ids) {
    ImmutableMap.Builder<Integer, String> programs = ImmutableMap.builder();
    for (Table.Row row : table.rows()) {
      if (!row.text(0).equals("program")) {
        continue;
      }
      if (!row.text(2).equals(OTHER)) {
        row.refuseUnknown(2, ids);
      }
      Matcher range = PROGRAMS.matcher(row.text(1));
      if (!range.matches()) {
        throw row.error("'" + row.text(1) + "' is not a MIDI program or a range of them");
      }
      int first = Integer.parseInt(range.group(1));
      int last = range.group(2) == null ? first : Integer.parseInt(range.group(2));
      for (int program = first; program <= last; program++) {
        programs.put(program, row.text(2));
      }
    }
    return programs.buildKeepingLast();
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
   * @throws FingeringException if there is no such tuning; the message lists the available ones
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
    List<String> known = tunings(instrument).stream().map(Tuning::name).toList();
    String others =
        tunings.values().stream()
            .filter(tuning -> tuning.name().equals(wanted.toLowerCase(Locale.ROOT)))
            .map(tuning -> "the " + byId(tuning.instrument()).nameInSentence())
            .collect(Collectors.joining(" and "));
    return new FingeringException(
        others.isEmpty()
            ? "no tuning '%s' for the %s; %s"
                .formatted(wanted, instrument.nameInSentence(), NearWord.advice(wanted, known))
            : "the tuning '%s' is for %s, not for the %s, whose tunings are %s"
                .formatted(wanted, others, instrument.nameInSentence(), String.join(", ", known)));
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
   * The instrument with that name, in one of the languages of the tables.
   *
   * @throws FingeringException if there is none; the message lists the instruments
   */
  public Instrument named(String name) {
    return byPartName(name)
        .orElseThrow(
            () ->
                new FingeringException(
                    "no instrument '%s'; %s"
                        .formatted(name, NearWord.advice(name, byId.keySet()))));
  }

  /**
   * The instrument that a part name mentions, in one of the languages of the tables; the first if
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
    return names.mentioned(partName).stream()
        .map(this::byId)
        .collect(ImmutableList.toImmutableList());
  }

  /** Whether a part name mentions a voice, or an instrument that is not a bowed string. */
  public boolean namesOtherInstrument(String partName) {
    return names.mentionsOther(partName);
  }

  /** Whether a part name mentions a keyboard instrument, which plays with any other instrument. */
  public boolean namesKeyboard(String partName) {
    return names.mentionsKeyboard(partName);
  }

  /**
   * Whether a part name is one that a voice, a guitar or a wind instrument shares with a bowed
   * string, so that only its neighbours show which is meant: Bass, Alto, Basso.
   */
  public boolean isSharedName(String partName) {
    return names.isShared(partName);
  }

  /**
   * Whether a part name is only a letter, which means an instrument beside bowed strings and
   * nothing alone: B.
   */
  public boolean isInitial(String partName) {
    return names.isInitial(partName);
  }

  /** The instrument of a MusicXML standard sound, for example {@code strings.viola}. */
  public Optional<Instrument> bySound(String sound) {
    return Optional.ofNullable(sounds.get(sound)).map(byId::get);
  }

  /**
   * Whether a MusicXML standard sound belongs to a family without bowed strings, for example {@code
   * wind.flutes}. The sound of a piano does not count: programs give it to any part.
   */
  public boolean isOtherSound(String sound) {
    return in(otherFamilies, sound) && !in(defaultSounds, sound);
  }

  private static boolean in(ImmutableSet<String> families, String sound) {
    return families.stream()
        .anyMatch(family -> sound.equals(family) || sound.startsWith(family + "."));
  }

  /**
   * The instrument of a General MIDI program.
   *
   * @param program its number, from 1
   */
  public Optional<Instrument> byProgram(int program) {
    return Optional.ofNullable(programs.get(program)).map(byId::get);
  }

  /**
   * Whether a General MIDI program is for an instrument that is not a bowed string. The piano, the
   * acoustic bass and strings together do not count: bowed strings are played back with them too.
   *
   * @param program its number, from 1
   */
  public boolean isOtherProgram(int program) {
    return OTHER.equals(programs.get(program));
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
