package fingering.cli.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.google.common.collect.ImmutableList;
import fingering.demand.Demand;
import fingering.demand.DemandParser;
import fingering.demand.EarlierPlan;
import fingering.demand.EarlierPlan.EarlierNote;
import fingering.demand.KeepPlan.KeptFingering;
import fingering.demand.MeasureSpan;
import fingering.files.FileNames;
import fingering.fingerboard.Finger;
import fingering.music.Passage;
import fingering.musicxml.SelectionException;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Pitch;
import fingering.tables.Position;
import fingering.userfile.SmallFile;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads an earlier plan from the JSON that {@code plan --format json} prints. */
public final class PlanFile {
  /** The name of the format, in its field {@code format}. */
  public static final String FORMAT = "fingering-plan";

  /** The version of the format, in its field {@code version}. */
  public static final int VERSION = 1;

  /** Enough for the longest parts: a note takes about 300 characters. */
  private static final int MAX_KIB = 64 * 1024;

  private final String file;
  private final Instrument instrument;

  private PlanFile(String file, Instrument instrument) {
    this.file = file;
    this.instrument = instrument;
  }

  /**
   * The parser of demands on a passage, including demands to keep an earlier plan.
   *
   * @param folder the folder of relative file names
   */
  public static DemandParser demands(Passage passage, Path folder) {
    return DemandParser.of(passage.instrument())
        .withEarlierPlans(text -> demand(text, passage, folder));
  }

  /**
   * The demand to keep a plan, {@code plan.json}, or some measures of it, {@code plan.json@9-16}.
   *
   * @throws SelectionException if the file cannot be read or does not fit the passage; the message
   *     is one sentence
   */
  private static Demand demand(String text, Passage passage, Path folder) {
    int at = text.lastIndexOf('@');
    boolean whole = at <= 0 || Files.exists(path(folder, text));
    Path file = path(folder, whole ? text : text.substring(0, at));
    MeasureSpan span = whole ? MeasureSpan.WHOLE : MeasureSpan.parse(text.substring(at + 1));
    try {
      return new PlanFile(file.toString(), passage.instrument()).read(file).demand(passage, span);
    } catch (SelectionException e) {
      throw e;
    } catch (FingeringException e) {
      throw new SelectionException(e.getMessage());
    }
  }

  /**
   * The path of a file name relative to a folder.
   *
   * @throws SelectionException if the text cannot be a file name
   */
  public static Path path(Path folder, String name) {
    try {
      return folder.resolve(name.strip());
    } catch (InvalidPathException e) {
      throw new SelectionException(FileNames.fault(name) + ".");
    }
  }

  private EarlierPlan read(Path path) {
    JsonNode root = parsed(SmallFile.text(path, "a plan", MAX_KIB));
    if (!root.path("format").asText().equals(FORMAT) || root.path("version").asInt() != VERSION) {
      throw notAPlan("it does not start like one");
    }
    if (root.has("plans")) {
      throw new SelectionException(
          file + " holds several plans; save the one to keep with 'plan --format json'.");
    }
    requireSame(root.path("instrument").asText(), root.path("tuning").asText());
    ImmutableList.Builder<EarlierNote> notes = ImmutableList.builder();
    int number = 0;
    for (JsonNode note : root.path("notes")) {
      number++;
      try {
        notes.add(note(note));
      } catch (FingeringException e) {
        throw notAPlan("its note " + number + " cannot be read: " + e.getMessage());
      }
    }
    return new EarlierPlan(file, notes.build());
  }

  private JsonNode parsed(String text) {
    try {
      return new ObjectMapper().readTree(text);
    } catch (JsonProcessingException e) {
      throw notAPlan(
          "line %d is not JSON"
              .formatted(e.getLocation() == null ? 1 : e.getLocation().getLineNr()));
    }
  }

  private SelectionException notAPlan(String reason) {
    return new SelectionException(
        file + " is not a plan saved with 'plan --format json': " + reason + "; save it again.");
  }

  private void requireSame(String other, String tuning) {
    if (!other.equals(instrument.id())) {
      throw new SelectionException(
          "%s is a plan for the %s, but this part is for the %s: make a plan for the %s first."
              .formatted(file, other, instrument.nameInSentence(), instrument.nameInSentence()));
    }
    if (!tuning.equals(instrument.tuning())) {
      throw new SelectionException(
          "%s is a plan for the tuning '%s', but this part has '%s': give the same --tuning."
              .formatted(file, tuning, instrument.tuning()));
    }
  }

  private EarlierNote note(JsonNode note) {
    int string = field(note, "string").asInt();
    if (string < 1 || string > instrument.strings().size()) {
      throw new FingeringException("there is no string " + string);
    }
    String symbol = field(note, "finger").asText();
    Finger finger =
        Arrays.stream(Finger.values())
            .filter(each -> each.symbol().equals(symbol))
            .findFirst()
            .orElseThrow(() -> new FingeringException("there is no finger " + symbol));
    KeptFingering fingering =
        new KeptFingering(
            string,
            finger,
            finger == Finger.OPEN
                ? Optional.empty()
                : Optional.of(Position.parse(field(note, "position").asText())),
            finger != Finger.OPEN && note.has("thumb")
                ? OptionalInt.of(
                    Pitch.parse(note.get("thumb").asText()).midi()
                        - instrument.string(string).pitch().midi())
                : OptionalInt.empty());
    if (!field(note, "onset").isNumber()) {
      throw new FingeringException("its onset is not a number");
    }
    return new EarlierNote(
        field(note, "measure").asText(),
        note.has("measureIndex")
            ? OptionalInt.of(note.get("measureIndex").asInt())
            : OptionalInt.empty(),
        note.get("onset").decimalValue(),
        Pitch.parse(field(note, "written").asText()),
        field(note, "midi").asInt(),
        fingering);
  }

  private static JsonNode field(JsonNode note, String name) {
    JsonNode field = note.path(name);
    if (!field.isValueNode()) {
      throw new FingeringException("it has no " + name);
    }
    return field;
  }
}
