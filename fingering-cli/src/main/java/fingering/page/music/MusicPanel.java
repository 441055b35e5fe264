package fingering.page.music;

import com.google.common.base.Joiner;
import com.google.common.collect.ImmutableList;
import fingering.engraving.EngravedSystem;
import fingering.engraving.EngravedSystem.MeasureSpan;
import fingering.engraving.Engraver;
import fingering.engraving.drawing.Circled;
import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.Glyph;
import fingering.engraving.ink.Canvas;
import fingering.music.Measure;
import fingering.music.Note;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import fingering.music.print.PrintedPart;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.page.live.MusicLine;
import fingering.page.template.JtemusicGenerated;
import fingering.page.view.Music;
import fingering.page.view.PlaceLink;
import fingering.page.view.Templates;
import fingering.practice.SpotExercise;
import fingering.svg.Svg;
import fingering.tables.FingeringException;
import gg.jte.Content;
import gg.jte.html.HtmlContent;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The music of all pages: lines as long as a screen or sheet is wide, and short ones for phones.
 */
public final class MusicPanel {
  /** The width of long lines: on A4 paper a staff is then 6 mm high. */
  public static final double WIDE = 120;

  /** The width of short lines: on a phone of 360 pixels a staff is then 28 pixels high. */
  public static final double NARROW = 48;

  /** The width of lines in one of two columns. */
  public static final double COLUMN = 70;

  /** White between two lines. */
  private static final double GAP = 1.2;

  /** What the letters of a language need above and below the boxes that are known. */
  private static final double AROUND = 0.4;

  /** The height of the staff. */
  private static final double STAFF = 4;

  /** How far the frame of a note reaches beyond its heads. */
  private static final double REACH = 0.35;

  private final Passage passage;
  private final Engraver engraver;
  private final Map<NoteAddress, Integer> moments;
  private final MusicWords words;

  public MusicPanel(Passage passage, PrintedPart printed, Lanes lanes) {
    this(passage, printed, lanes, ImmutableList.of());
  }

  /**
   * Music with rings around some signs.
   *
   * @param circles what to circle
   */
  public MusicPanel(Passage passage, PrintedPart printed, Lanes lanes, List<Circled> circles) {
    Engraver bare = Engraver.of(passage, printed).withBelow(lanes.below()).withCircles(circles);
    engraver = lanes.above().isEmpty() ? bare : bare.withAbove(lanes.above().get(0));
    words = new MusicWords(passage, printed, lanes);
    moments = moments(passage);
    this.passage = passage;
  }

  /**
   * Some measures of a part.
   *
   * @param first the index of the first measure
   * @param last the index of the last one
   */
  public static MusicPanel excerpt(
      Passage passage,
      PrintedPart printed,
      int first,
      int last,
      Lanes lanes,
      List<Circled> circles) {
    Passage measures =
        new Passage(
            passage.title(),
            passage.partId(),
            passage.partName(),
            passage.instrument(),
            passage.tempi(),
            passage.measures().stream()
                .filter(measure -> measure.index() >= first && measure.index() <= last)
                .collect(ImmutableList.toImmutableList()),
            passage.moments(),
            ImmutableList.of());
    return new MusicPanel(measures, printed.only(first, last, Optional.empty()), lanes, circles);
  }

  /** The right edge of the music of a line, which may be shorter than the line. */
  public static double right(EngravedSystem line) {
    return line.measures().get(line.measures().size() - 1).right() + AROUND;
  }

  /** An exercise with its fingers; empty if it cannot be read back as music. */
  public static Optional<MusicPanel> of(SpotExercise exercise) {
    try {
      Score score = ScoreReader.read(exercise.file());
      Passage passage = score.passage(PassageRequest.WHOLE.withInstrument(exercise.instrument()));
      return Optional.of(
          new MusicPanel(passage, score.printed(passage, Optional.empty()), Lanes.of(exercise)));
    } catch (FingeringException e) {
      return Optional.empty();
    }
  }

  /** The music of a page that has no other. */
  public Content html() {
    return html("", WIDE, EnumSet.noneOf(Glyph.class));
  }

  /**
   * One of several pieces of music on a page.
   *
   * @param id begins the ids of its measures
   * @param width the width of long lines, in staff spaces
   * @param known the shapes that the page has already; those of this music are added
   */
  public Content html(String id, double width, Set<Glyph> known) {
    Music music = music(lines(width), width, lines(NARROW), id, known, false);
    HtmlContent html = output -> JtemusicGenerated.render(output, Templates.PLAIN, music);
    return html;
  }

  /**
   * The music of a page that plays it, with a frame around the notes of each moment.
   *
   * @param known takes the shapes that it uses
   */
  public Music played(Set<Glyph> known) {
    return music(lines(WIDE), WIDE, lines(NARROW), "", known, true);
  }

  private Music music(
      List<EngravedSystem> wide,
      double width,
      List<EngravedSystem> narrow,
      String id,
      Set<Glyph> known,
      boolean played) {
    List<EngravedSystem> all = new ArrayList<>(wide);
    all.addAll(narrow);
    return new Music(
        Templates.elements((known.isEmpty() ? Svg.hatching("hatch") : "") + shapes(all, known)),
        views(wide, width, id, played),
        views(narrow, NARROW, "n" + id, played));
  }

  /**
   * A line of a page that replaces it later.
   *
   * @param lanes the fingers of its measures
   * @param width of the line, in staff spaces
   * @param id names its element
   */
  MusicLine line(EngravedSystem line, Lanes lanes, double width, String id) {
    return new MusicLine(
        id,
        box(line, width),
        words.with(lanes).of(line),
        targets(line, "") + frames(line) + line.svg());
  }

  /** The moment at which each note begins. */
  static Map<NoteAddress, Integer> moments(Passage passage) {
    Map<NoteAddress, Integer> moments = new HashMap<>();
    for (int m = 0; m < passage.moments().size(); m++) {
      for (Note note : passage.moments().get(m).starting()) {
        moments.putIfAbsent(note.address(), m);
      }
    }
    return moments;
  }

  /**
   * A frame around the notes of each moment, which shows what is chosen or sounds. Its attribute
   * {@code data-moment} is the index of the moment in the passage.
   */
  private String frames(EngravedSystem line) {
    Map<Integer, Box> boxes = new TreeMap<>();
    line.heads()
        .forEach(
            (note, box) ->
                Optional.ofNullable(moments.get(note))
                    .ifPresent(moment -> boxes.merge(moment, box, MusicPanel::around)));
    StringBuilder frames = new StringBuilder();
    boxes.forEach(
        (moment, box) -> {
          double top = Math.min(-1, box.top() - REACH);
          double bottom = Math.max(STAFF + 1, box.bottom() + REACH);
          frames
              .append("<rect class=\"moment\" data-moment=\"")
              .append(moment)
              .append("\" data-measure=\"")
              .append(passage.moments().get(moment).place().measureIndex())
              .append("\" x=\"")
              .append(Canvas.n(box.left() - REACH))
              .append("\" y=\"")
              .append(Canvas.n(top))
              .append("\" width=\"")
              .append(Canvas.n(box.width() + 2 * REACH))
              .append("\" height=\"")
              .append(Canvas.n(bottom - top))
              .append("\"/>");
        });
    return frames.toString();
  }

  private static Box around(Box one, Box other) {
    return new Box(
        Math.min(one.left(), other.left()),
        Math.min(one.top(), other.top()),
        Math.max(one.right(), other.right()),
        Math.max(one.bottom(), other.bottom()));
  }

  /** The lines of the music at a width. */
  public List<EngravedSystem> lines(double width) {
    return engraver.draw(width);
  }

  /** The lines of the music at a width, each drawn when it is asked for. */
  public Iterator<EngravedSystem> drawing(double width) {
    return engraver.lines(width).iterator();
  }

  /**
   * The shapes that lines use, as SVG.
   *
   * @param known those that need not be repeated; the others are added to it
   */
  public static String shapes(List<EngravedSystem> lines, Set<Glyph> known) {
    Set<Glyph> used = EnumSet.noneOf(Glyph.class);
    lines.forEach(line -> used.addAll(line.glyphs()));
    used.removeAll(known);
    known.addAll(used);
    return shapes(used);
  }

  /** Shapes as SVG. */
  public static String shapes(Iterable<Glyph> wanted) {
    StringBuilder shapes = new StringBuilder();
    for (Glyph glyph : wanted) {
      shapes
          .append("<path id=\"")
          .append(glyph.id())
          .append("\" transform=\"scale(10)\" d=\"")
          .append(glyph.path())
          .append("\"/>");
    }
    return shapes.toString();
  }

  /** The upper edge of the picture of a line, in staff spaces. */
  public static double top(EngravedSystem line) {
    return line.top() - AROUND;
  }

  /** The lower edge of the picture of a line, in staff spaces. */
  public static double bottom(EngravedSystem line) {
    return line.bottom() + GAP;
  }

  private ImmutableList<Music.Line> views(
      List<EngravedSystem> lines, double width, String id, boolean played) {
    return lines.stream()
        .map(line -> view(line, width, targets(line, id) + (played ? frames(line) : "")))
        .collect(ImmutableList.toImmutableList());
  }

  /** A line without places that links lead to. */
  public Music.Line view(EngravedSystem line, double width) {
    return view(line, width, "");
  }

  private Music.Line view(EngravedSystem line, double width, String targets) {
    return new Music.Line(
        box(line, width), words.of(line), Templates.elements(targets + line.svg()));
  }

  private static String box(EngravedSystem line, double width) {
    return Joiner.on(' ')
        .join(0, Canvas.n(top(line)), Canvas.n(width), Canvas.n(bottom(line) - top(line)));
  }

  private String number(int measure) {
    return passage.measure(measure).map(Measure::number).orElse("");
  }

  /** A frame for each measure, which shows when a link leads to it. */
  private String targets(EngravedSystem line, String id) {
    StringBuilder targets = new StringBuilder();
    for (MeasureSpan measure : line.measures()) {
      if (measure.begins()) {
        targets
            .append("<rect class=\"target\" id=\"")
            .append(Svg.escaped(id))
            .append(PlaceLink.id(measure.index()))
            .append("\" data-number=\"")
            .append(Svg.escaped(number(measure.index())))
            .append("\" x=\"")
            .append(Canvas.n(measure.left()))
            .append("\" y=\"")
            .append(Canvas.n(line.top()))
            .append("\" width=\"")
            .append(Canvas.n(measure.right() - measure.left()))
            .append("\" height=\"")
            .append(Canvas.n(line.height()))
            .append("\"/>");
      }
    }
    return targets.toString();
  }
}
