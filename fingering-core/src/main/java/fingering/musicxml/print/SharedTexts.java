package fingering.musicxml.print;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.LinkedHashMultimap;
import com.google.common.collect.SetMultimap;
import fingering.music.Measure;
import fingering.music.print.JumpMark;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedPart;
import fingering.music.print.PrintedText;
import fingering.music.print.PrintedText.Kind;
import fingering.music.print.Side;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.element.TempoWord;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Texts for all players. A score prints tempo words, metronome marks and rehearsal marks once,
 * above the top part; the part of each player has them too (common practice, no source).
 */
public final class SharedTexts {
  private static final ImmutableSet<Kind> SHARED =
      ImmutableSet.of(Kind.TEMPO, Kind.REHEARSAL, Kind.JUMP);

  private record Key(int measure, Kind kind, String text) {
    static Key of(PrintedText text) {
      return new Key(
          text.place().measureIndex(), text.kind(), text.text().toLowerCase(Locale.ROOT));
    }
  }

  private record Source(int part, int direction) {}

  private SharedTexts() {}

  /**
   * Adds to a part the texts and jumps that only other parts have. Such texts get numbers of
   * directions below 0.
   *
   * @param part the part
   * @param measures its measures
   * @param others all parts of the score, in order
   */
  public static PrintedPart add(
      PrintedPart part, List<Measure> measures, List<PrintedPart> others) {
    Set<Key> known = new HashSet<>();
    part.texts().forEach(text -> known.add(Key.of(text)));
    SetMultimap<Integer, PrintedText> added = LinkedHashMultimap.create();
    Map<Source, Integer> numbers = new HashMap<>();
    for (int p = 0; p < others.size(); p++) {
      for (PrintedText text : shared(others.get(p))) {
        int index = text.place().measureIndex();
        if (index < measures.size() && known.add(Key.of(text))) {
          int number =
              numbers.computeIfAbsent(
                  new Source(p, text.direction()), source -> -1 - numbers.size());
          Position position = new Position(index, text.place().onset());
          added.put(
              index,
              new PrintedText(
                  text.kind(),
                  text.text(),
                  position.place(measures),
                  position.start(measures),
                  number,
                  text.side(),
                  text.style(),
                  text.metronome()));
        }
      }
    }
    ImmutableList.Builder<PrintedMeasure> all = ImmutableList.builder();
    for (PrintedMeasure measure : part.measures()) {
      // Those of the top part stand above those of the player.
      List<PrintedText> texts = new ArrayList<>(added.get(measure.index()));
      texts.addAll(measure.texts());
      texts.sort(Comparator.comparing(PrintedText::start, Quarters.ORDER));
      all.add(measure.withTexts(ImmutableList.copyOf(texts)));
    }
    return part.withMeasures(all.build()).withJumps(jumps(part, measures, others));
  }

  /** The jumps of a part, or those of the first part that has any. */
  private static ImmutableList<JumpMark> jumps(
      PrintedPart part, List<Measure> measures, List<PrintedPart> others) {
    return Stream.concat(Stream.of(part), others.stream())
        .map(PrintedPart::jumps)
        .filter(jumps -> !jumps.isEmpty())
        .findFirst()
        .orElse(part.jumps())
        .stream()
        .filter(jump -> jump.place().measureIndex() < measures.size())
        .map(
            jump ->
                new JumpMark(
                    jump.kind(),
                    new Position(jump.place().measureIndex(), jump.place().onset()).place(measures),
                    jump.name()))
        .collect(ImmutableList.toImmutableList());
  }

  private static List<PrintedText> shared(PrintedPart part) {
    ImmutableSet<Integer> tempi =
        part.texts().stream()
            .filter(text -> text.kind() == Kind.TEMPO)
            .map(PrintedText::direction)
            .collect(ImmutableSet.toImmutableSet());
    return part.texts().stream()
        .filter(
            text ->
                SHARED.contains(text.kind())
                    || (text.kind() == Kind.WORDS
                        && text.side() != Side.BELOW
                        && (tempi.contains(text.direction()) || isTempo(text))))
        .toList();
  }

  private static boolean isTempo(PrintedText text) {
    return TempoWord.of(text.text(), text.place().measureIndex(), text.place().onset()).isPresent();
  }
}
