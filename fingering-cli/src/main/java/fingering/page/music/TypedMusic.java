package fingering.page.music;

import static fingering.page.view.PageText.counted;
import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.google.common.hash.Hashing;
import fingering.abc.TuneScore;
import fingering.abc.TuneText.TypedMeasure;
import fingering.abc.Tunebook;
import fingering.abc.syntax.TuneFault;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.page.live.MusicLine;
import fingering.page.live.TypedView;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Draws music while it is typed in ABC notation. What cannot be read never hides the rest. */
public final class TypedMusic {
  /** The narrowest place, in pixels, in which lines for two columns can be read. */
  private static final int WIDE_PLACE = 520;

  /** For drawing alone any instrument will do. */
  private static final String ANY = "viola";

  private static final Pattern NOTE = Pattern.compile("(?m)^(?![A-Za-z+]:|\\s*%).*[A-Ga-g]");

  private final TuneScore tune;
  private final Passage passage;
  private final Score score;

  private TypedMusic(TuneScore tune, Passage passage, Score score) {
    this.tune = tune;
    this.passage = passage;
    this.score = score;
  }

  /**
   * Draws a text.
   *
   * @param abc one tune in ABC notation, or anything that may become one
   * @param width the width of the place for the music, in pixels
   * @param known the hashes of the lines that the page shows
   */
  public static TypedView of(String abc, int width, Set<String> known) {
    if (!NOTE.matcher(abc).find()) {
      return sentence(text("type.no-notes"));
    }
    try {
      Tunebook book = Tunebook.parse(text("type.source"), abc);
      if (book.tunes().size() > 1) {
        return sentence(text("type.several", book.tunes().size()));
      }
      return read(book.choose(Optional.empty())).view(width, known);
    } catch (FingeringException e) {
      String message = String.valueOf(e.getMessage());
      return sentence(message.substring(0, 1).toUpperCase(Locale.ROOT) + message.substring(1));
    }
  }

  private static TypedView sentence(String sentence) {
    return new TypedView(
        sentence, ImmutableList.of(), ImmutableList.of(), "", "", ImmutableList.of());
  }

  private static TypedMusic read(TuneScore tune) {
    Score score = ScoreReader.read(ScoreFile.of(tune.musicXml(), tune.remarks()));
    PartInfo part = score.parts().get(0);
    PassageRequest first =
        PassageRequest.WHOLE.withPart(Integer.toString(part.number())).ignoringWords();
    PassageRequest request =
        part.instrument().isPresent()
            ? first
            : first.withInstrument(Instruments.standard().named(ANY));
    return new TypedMusic(tune, score.passage(request), score);
  }

  private TypedView view(int width, Set<String> known) {
    List<TuneFault> faults = new ArrayList<>(tune.text().faults());
    faults.addAll(tooLow());
    faults.sort(Comparator.comparingInt(TuneFault::line).thenComparingInt(TuneFault::column));
    ImmutableList<TypedMeasure> measures = tune.text().measures();
    double wide = width < WIDE_PLACE ? MusicPanel.NARROW : MusicPanel.COLUMN;
    return new TypedView(
        heard(measures, faults.size()),
        faults.stream()
            .map(fault -> new TypedView.Fault(fault.line(), fault.column(), full(fault.what())))
            .collect(ImmutableList.toImmutableList()),
        tune.text().remarks().stream()
            .map(
                remark ->
                    full(remark.substring(0, 1).toUpperCase(Locale.ROOT) + remark.substring(1)))
            .collect(ImmutableList.toImmutableList()),
        measures.stream()
            .map(measure -> measure.line() + ":" + measure.column())
            .collect(Collectors.joining(" ")),
        IntStream.range(0, measures.size())
            .filter(i -> !measures.get(i).fits())
            .mapToObj(Integer::toString)
            .collect(Collectors.joining(" ")),
        drawn(wide).stream()
            .map(line -> line(line, known))
            .collect(ImmutableList.toImmutableList()));
  }

  private ImmutableList<MusicLine> drawn(double width) {
    LineDrawer drawer = new LineDrawer(passage, score.printed(passage, Optional.empty()), width);
    return drawer.draw(drawer.lines(Lanes.NONE, ImmutableList.of()));
  }

  private static String full(String remark) {
    return remark + ".";
  }

  private static String heard(ImmutableList<TypedMeasure> measures, int faults) {
    boolean pickup = measures.size() > 1 && measures.get(0).pickup();
    long numbers = measures.stream().map(TypedMeasure::number).distinct().count();
    String amount = counted("type.measures", (int) numbers - (pickup ? 1 : 0));
    return (pickup ? text("type.pickup", amount) : text("type.amount", amount))
        + " "
        + (faults == 0 ? text("type.clean") : counted("type.faults", faults));
  }

  private static TypedView.Line line(MusicLine line, Set<String> known) {
    String hash =
        Hashing.murmur3_128()
            .hashUnencodedChars(line.id() + line.box() + line.words() + line.drawing())
            .toString();
    return new TypedView.Line(line, hash, known.contains(hash));
  }

  /** The first note of each measure below the lowest string: most often a wrong octave. */
  private ImmutableList<TuneFault> tooLow() {
    Instrument instrument = passage.instrument();
    boolean named = score.parts().get(0).instrument().isPresent();
    ImmutableList.Builder<TuneFault> faults = ImmutableList.builder();
    Set<Integer> seen = new HashSet<>();
    for (Note note : passage.notes()) {
      int index = note.address().measure();
      if (named
          && note.midi() < instrument.lowest().midi()
          && index < tune.text().measures().size()
          && seen.add(index)) {
        TypedMeasure measure = tune.text().measures().get(index);
        faults.add(
            new TuneFault(
                measure.line(),
                measure.column(),
                text(
                    "type.low",
                    measure.number(),
                    note.written().display(),
                    instrument.nameInSentence())));
      }
    }
    return faults.build();
  }
}
