package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.music.Measure;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.music.print.PrintedPart;
import fingering.musicxml.SelectionException;
import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.print.SharedTexts;
import fingering.musicxml.reading.TieChains.Onset;
import fingering.musicxml.timeline.PartTimeline;
import fingering.musicxml.timeline.PartTimeline.Slot;
import fingering.musicxml.xml.XmlText;
import fingering.tables.Choice;
import fingering.tables.Instrument;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** A score: its parts, and passages read from them. Immutable and thread-safe. */
public final class Score {
  private final String title;
  private final ImmutableList<PartInfo> parts;
  private final ImmutableList<PartTimeline> timelines;
  private final ImmutableList<String> rehearsals;
  private final ImmutableMap<Integer, UnreadableScoreException> unread;
  private final ImmutableList<String> remarks;

  /**
   * Creates a score.
   *
   * @param unread the errors of parts that cannot be read, by number from 1; their timelines are
   *     empty
   */
  Score(
      String title,
      ImmutableList<PartInfo> parts,
      ImmutableList<PartTimeline> timelines,
      ImmutableMap<Integer, UnreadableScoreException> unread,
      ImmutableList<String> remarks) {
    this.title = title;
    this.parts = parts;
    this.timelines = timelines;
    rehearsals = rehearsals(timelines);
    this.unread = unread;
    this.remarks = remarks(remarks, unread);
  }

  private static ImmutableList<String> remarks(
      ImmutableList<String> remarks, ImmutableMap<Integer, UnreadableScoreException> unread) {
    return Stream.concat(
            remarks.stream(),
            unread.entrySet().stream()
                .map(
                    part ->
                        "part %d is left out. %s"
                            .formatted(
                                part.getKey(),
                                String.valueOf(part.getValue().getMessage())
                                    .replaceFirst("\\.$", ""))))
        .collect(ImmutableList.toImmutableList());
  }

  // Programs print rehearsal marks once, above the top part.
  private static ImmutableList<String> rehearsals(ImmutableList<PartTimeline> timelines) {
    List<String> marks = new ArrayList<>();
    for (PartTimeline timeline : timelines) {
      for (Measure measure : timeline.measures()) {
        if (measure.index() == marks.size()) {
          marks.add(measure.rehearsal());
        } else if (marks.get(measure.index()).isEmpty()) {
          marks.set(measure.index(), measure.rehearsal());
        }
      }
    }
    return ImmutableList.copyOf(marks);
  }

  /** Returns the title, empty if it has none. */
  public String title() {
    return title;
  }

  /** Returns the parts in score order, at least one. */
  public ImmutableList<PartInfo> parts() {
    return parts;
  }

  /**
   * Returns the part with this name, id or number, ignoring case. A beginning or a word of the name
   * is enough if it matches only one part.
   *
   * @throws SelectionException if no part or several parts match
   */
  public PartInfo part(String nameOrNumberOrId) {
    return choice().named(nameOrNumberOrId);
  }

  /**
   * Returns what {@link #part} finds a part by: its name, or its number if the name is that of
   * several parts.
   *
   * @param part one of {@link #parts}
   * @throws IllegalArgumentException if the part is not of this score
   */
  public String nameOrNumber(PartInfo part) {
    checkOwn(part);
    return choice().nameOrNumber(part);
  }

  /**
   * Returns the part to read if none is requested: the only one, or the only one for the
   * instrument, or for any known instrument if none is given.
   *
   * @throws SelectionException if there is not exactly one
   */
  public PartInfo onlyPart(Optional<Instrument> instrument) {
    return choice().only(instrument);
  }

  /**
   * Returns whether a part has a note with a pitch; an unreadable part has none.
   *
   * @param part one of {@link #parts}
   * @throws IllegalArgumentException if the part is not of this score
   */
  public boolean hasNotes(PartInfo part) {
    return !timeline(part).slots().isEmpty();
  }

  /**
   * Returns whether a part can be read.
   *
   * @param part one of {@link #parts}
   * @throws IllegalArgumentException if the part is not of this score
   */
  public boolean readable(PartInfo part) {
    checkOwn(part);
    return !unread.containsKey(part.number());
  }

  private PartTimeline timeline(PartInfo part) {
    checkOwn(part);
    return timelines.get(part.number() - 1);
  }

  private void checkOwn(PartInfo part) {
    if (!parts.contains(part)) {
      throw new IllegalArgumentException("Part " + part + " is not a part of this score");
    }
  }

  /**
   * Returns assumptions and omissions made in reading the score, one sentence each without full
   * stop.
   */
  public ImmutableList<String> remarks() {
    return remarks;
  }

  private PartChoice choice() {
    return new PartChoice(
        title.isEmpty() ? "The score" : "'" + XmlText.printable(title) + "'", parts);
  }

  /**
   * Reads a passage.
   *
   * @throws SelectionException if the request does not fit the score, or the passage has no notes
   * @throws UnreadableScoreException if the part has only notes without pitch
   */
  public Passage passage(PassageRequest request) {
    return passage(request, UnaryOperator.identity());
  }

  /**
   * Reads a passage for an instrument of another tuning or size. The notes are read at sounding
   * pitch, not as fingered.
   *
   * @param built returns the played instrument for the instrument that the request or the part
   *     names: with the same id, but {@link Instrument#tuned tuned} or {@link Instrument#sized
   *     sized}. Its exceptions are passed on.
   * @throws SelectionException if the request does not fit the score, or the passage has no notes
   * @throws UnreadableScoreException if the part has only notes without pitch
   */
  public Passage passage(PassageRequest request, UnaryOperator<Instrument> built) {
    return passage(
        request.part().map(this::part).orElseGet(() -> onlyPart(request.instrument())),
        request,
        built);
  }

  /**
   * Reads a passage of a part. The part in the request is ignored.
   *
   * @param info one of {@link #parts}
   * @param built as in {@link #passage(PassageRequest, UnaryOperator)}
   * @throws IllegalArgumentException if the part is not of this score
   * @throws SelectionException if the request does not fit the part, or the passage has no notes
   * @throws UnreadableScoreException if the part has only notes without pitch
   */
  public Passage passage(PartInfo info, PassageRequest request, UnaryOperator<Instrument> built) {
    PartTimeline timeline = timeline(info);
    refuseEmpty(info, timeline);
    Instrument usual =
        request.instrument().or(info::instrument).orElseThrow(() -> noInstrument(info));
    Instrument withStrings = TuningReading.withAddedStrings(timeline, usual);
    Instrument instrument = built.apply(withStrings);
    ImmutableList<Measure> measures = measures(timeline);
    MeasureRange.Finder finder =
        new MeasureRange.Finder(measures, timeline.implicit(), info.name());
    MeasureRange range = request.measures().map(finder::find).orElseGet(finder::whole);
    request.voice().ifPresent(voice -> refuseUnknownVoice(voice, info, timeline));
    PitchReading pitches = PitchReading.of(timeline, instrument);
    TempoMap clock =
        new TempoMap(
            ScoreTempi.of(timelines, measures),
            measures.subList(range.first(), range.last() + 1),
            request.tempo());
    Predicate<WrittenNote> inVoice = note -> request.voice().map(note.voice()::equals).orElse(true);
    Predicate<WrittenNote> wanted =
        inVoice.and(note -> note.measure() >= range.first() && note.measure() <= range.last());
    PassageNotes notes = new PassageNotes(instrument, measures, pitches);
    ImmutableList<Onset> starting = notes.read(timeline, wanted);
    if (starting.isEmpty()) {
      throw new SelectionException(
          "%s has no notes%s in measures %s to %s%s: choose other measures."
              .formatted(
                  info.name(),
                  notes.remarks().isEmpty() ? "" : " that can be read",
                  measures.get(range.first()).number(),
                  measures.get(range.last()).number(),
                  request.voice().map(voice -> ", voice " + voice).orElse("")));
    }
    SlurEdits.Changed slurs =
        SlurEdits.of(request, timeline.slots(), inVoice, plain -> passage(info, plain, built));
    ImmutableList<Moment> moments =
        MomentBuilder.build(
            timeline,
            clock,
            new StyleSpans(timeline.styles(), ScoreTempi.wordStarts(timelines, measures)),
            SlurSpans.joined(slurs.spans()),
            starting);
    ImmutableList.Builder<String> found = ImmutableList.builder();
    found.addAll(remarks);
    if (request.instrument().isEmpty()) {
      info.doubt().ifPresent(found::add);
    }
    if (withStrings.tuning().equals(usual.tuning())
        || !withStrings.tuning().equals(instrument.tuning())) {
      TuningReading.remark(instrument).ifPresent(found::add);
    }
    found.addAll(TuningReading.remarks(timeline, usual, instrument));
    range.remark().ifPresent(found::add);
    pitches.remark().ifPresent(found::add);
    HarmonicReading.remark(starting).ifPresent(found::add);
    found.addAll(notes.remarks());
    found.addAll(clock.remarks());
    StringReading strings =
        request.words()
            ? StringReading.of(timeline, instrument, moments)
            : new StringReading(ImmutableList.of(), ImmutableList.of());
    found.addAll(strings.remarks());
    if (request.words()) {
      found.addAll(PositionReading.remarks(timeline, moments));
    }
    found.addAll(timeline.leftOut().remarks());
    return new Passage(
        title,
        info.id(),
        info.name(),
        instrument,
        clock.tempi(),
        measures.subList(range.first(), range.last() + 1),
        moments,
        found.build(),
        strings.printed(),
        request.words() ? PositionReading.of(timeline, instrument, moments) : ImmutableList.of(),
        ImmutableList.of(),
        slurs.slurs());
  }

  /**
   * Returns what is printed on the staff in the measures of a passage.
   *
   * @param passage a passage read from this score
   * @param voice the only voice to show; empty for all voices
   * @throws IllegalArgumentException if the passage is not of this score
   */
  public PrintedPart printed(Passage passage, Optional<String> voice) {
    int part = passage.moments().get(0).starting().get(0).address().part();
    ImmutableList<Measure> read = passage.measures();
    if (!isOwn(passage, part)) {
      throw new IllegalArgumentException("The passage is not from this score");
    }
    return SharedTexts.add(
            timelines.get(part).print(),
            timelines.get(part).measures(),
            timelines.stream().map(PartTimeline::print).toList())
        .withSlurs(passage.slurs())
        .only(read.get(0).index(), read.get(read.size() - 1).index(), voice);
  }

  private boolean isOwn(Passage passage, int part) {
    ImmutableList<Measure> read = passage.measures();
    if (part >= parts.size()) {
      return false;
    }
    ImmutableList<Measure> all = measures(timelines.get(part));
    int from = read.get(0).index();
    int to = from + read.size();
    return parts.get(part).id().equals(passage.partId())
        && to <= all.size()
        && all.subList(from, to).equals(read);
  }

  private ImmutableList<Measure> measures(PartTimeline timeline) {
    return timeline.measures().stream()
        .map(
            m ->
                new Measure(
                    m.index(),
                    m.number(),
                    m.start(),
                    m.length(),
                    m.fifths(),
                    m.beats(),
                    m.beatType(),
                    m.rehearsal().isEmpty() ? rehearsals.get(m.index()) : m.rehearsal()))
        .collect(ImmutableList.toImmutableList());
  }

  private void refuseEmpty(PartInfo info, PartTimeline timeline) {
    UnreadableScoreException fault = unread.get(info.number());
    if (fault != null) {
      throw fault;
    }
    if (!timeline.slots().isEmpty()) {
      return;
    }
    if (!timeline.leftOut().faults().isEmpty()) {
      throw new UnreadableScoreException(
          "%s has no note that can be read (%s): fix the part in your notation program and export the score again."
              // One is enough to look for; all of them make a long sentence.
              .formatted(info.name(), timeline.leftOut().faults().get(0)));
    }
    if (timeline.leftOut().unpitched() > 0) {
      throw new UnreadableScoreException(
          "%s is a percussion part without pitched notes: choose a part for a string instrument."
              .formatted(info.name()),
          Choice.PART);
    }
    throw new SelectionException(
        "%s has no %s to finger: choose another part."
            .formatted(info.name(), timeline.leftOut().unprinted() > 0 ? "printed notes" : "notes"),
        Choice.PART);
  }

  private static SelectionException noInstrument(PartInfo info) {
    return new SelectionException(
        "Neither the name nor the clef of %s shows its instrument: choose it, such as violin or cello."
            .formatted(info.name()),
        Choice.INSTRUMENT);
  }

  private static void refuseUnknownVoice(String voice, PartInfo info, PartTimeline timeline) {
    ImmutableList<String> voices =
        timeline.slots().stream()
            .map(Slot::notes)
            .flatMap(notes -> notes.stream())
            .map(WrittenNote::voice)
            .distinct()
            .sorted()
            .collect(ImmutableList.toImmutableList());
    if (!voices.contains(voice)) {
      throw new SelectionException(
          "%s has no voice '%s'; choose one: %s."
              .formatted(info.name(), XmlText.printable(voice), XmlText.listed(voices)),
          Choice.VOICE);
    }
  }
}
