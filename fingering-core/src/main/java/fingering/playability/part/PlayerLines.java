package fingering.playability.part;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.GripFinder;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import fingering.music.PrintedString;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.PlannerFactory;
import fingering.tempo.MeasureLimits;
import fingering.tempo.PlayerSpeed;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Divides a part into the lines of its players and plans each line: one line for one player, a line
 * for each group of a divided section. Notes out of range are left out. Use an instance once.
 */
public final class PlayerLines {
  /** The most groups of a divided section; any further, lower notes belong to the last group. */
  private static final int MOST = 4;

  private final Passage passage;
  private final PlannerFactory planners;
  private final GripFinder finder;
  private final EasyGrips easyGrips;
  private final PlayerSpeed playerSpeed;

  /** The groups of notes that are not for the first group, 0. */
  private final Map<NoteAddress, Integer> lowerGroups = new HashMap<>();

  /** Creates the lines of a passage for players of a speed. */
  public PlayerLines(
      Passage passage, PlannerFactory planners, EasyGrips easyGrips, PlayerSpeed playerSpeed) {
    this.passage = passage;
    this.planners = planners;
    finder = planners.finder(passage.instrument());
    this.easyGrips = easyGrips;
    this.playerSpeed = playerSpeed;
  }

  /** Returns a moment without its notes out of range; empty if no note is left. */
  public Optional<Moment> playable(Moment moment) {
    ImmutableList<Note> left =
        moment.starting().stream()
            .filter(note -> !grips(with(moment, ImmutableList.of(note))).isEmpty())
            .collect(ImmutableList.toImmutableList());
    return left.isEmpty() ? Optional.empty() : Optional.of(with(moment, left));
  }

  /** Returns every grip of a moment; an empty list if a note that begins is out of range. */
  public ImmutableList<Grip> grips(Moment moment) {
    return finder.grips(moment);
  }

  /** Returns the moment with these notes beginning, and none held. */
  public static Moment with(Moment moment, ImmutableList<Note> starting) {
    return with(moment, starting, ImmutableList.of(), moment.soundMicros(), moment.restMicros());
  }

  private static Moment with(
      Moment moment,
      ImmutableList<Note> starting,
      ImmutableList<Note> held,
      long soundMicros,
      long restMicros) {
    return moment
        .withNotes(starting, held)
        .withTimes(moment.startMicros(), soundMicros, restMicros);
  }

  /**
   * Returns the planned lines of the part; none if nothing can be played.
   *
   * @param playable each moment without notes out of range; empty if none is left
   * @param grips the grips of each playable moment
   */
  public ImmutableList<PlayerLine> of(
      ImmutableList<Optional<Moment>> playable,
      ImmutableList<ImmutableList<Grip>> grips,
      Players players,
      PrintedNoteIndex prints) {
    int groups = 1;
    for (int m = 0; m < playable.size(); m++) {
      if (playable.get(m).isPresent() && players.canDivide(m)) {
        groups = Math.max(groups, divide(m, playable.get(m).get(), grips.get(m), players, prints));
      }
    }
    ImmutableList.Builder<PlayerLine> lines = ImmutableList.builder();
    for (int group = 0; group < groups; group++) {
      line(group, playable, grips).ifPresent(lines::add);
    }
    return lines.build();
  }

  /** Assigns the notes of a moment to groups, and returns the number of groups. */
  private int divide(
      int m, Moment moment, ImmutableList<Grip> grips, Players players, PrintedNoteIndex prints) {
    boolean mustDivide = players.divided().get(m) || grips.get(0).divided();
    if (moment.starting().size() + moment.held().size() == 1
        || !(mustDivide || players.divides(m))) {
      return 1;
    }
    if (players.voices().get(m) && !grips.isEmpty()) {
      return divideByVoice(moment, prints);
    }
    int size = moment.starting().size();
    for (int i = 0; i < size; i++) {
      assign(moment.starting().get(i), size - 1 - i);
    }
    return Math.min(MOST, size);
  }

  private int divideByVoice(Moment moment, PrintedNoteIndex prints) {
    List<String> voices = new ArrayList<>();
    for (Note note : moment.sounding()) {
      String voice = prints.voice(note);
      if (!voices.contains(voice)) {
        voices.add(voice);
      }
    }
    voices.sort(null);
    for (Note note : moment.starting()) {
      assign(note, voices.indexOf(prints.voice(note)));
    }
    return Math.min(MOST, voices.size());
  }

  private void assign(Note note, int group) {
    if (group > 0) {
      lowerGroups.put(note.address(), Math.min(group, MOST - 1));
    }
  }

  private ImmutableList<Note> of(int group, ImmutableList<Note> notes) {
    return lowerGroups.isEmpty()
        ? notes
        : notes.stream()
            .filter(note -> lowerGroups.getOrDefault(note.address(), 0) == group)
            .collect(ImmutableList.toImmutableList());
  }

  private Optional<PlayerLine> line(
      int group,
      ImmutableList<Optional<Moment>> playable,
      ImmutableList<ImmutableList<Grip>> grips) {
    ImmutableList.Builder<Moment> moments = ImmutableList.builder();
    ImmutableList.Builder<ImmutableList<Grip>> gripsOfLine = ImmutableList.builder();
    long silentFrom = 0;
    for (int m = 0; m < playable.size(); m++) {
      if (playable.get(m).isEmpty()) {
        continue;
      }
      Moment moment = playable.get(m).get();
      ImmutableList<Note> starting = of(group, moment.starting());
      if (starting.isEmpty()) {
        continue;
      }
      ImmutableList<Note> held = of(group, moment.held());
      boolean whole =
          starting.size() == moment.starting().size() && held.size() == moment.held().size();
      Moment own =
          whole && lowerGroups.isEmpty()
              ? moment
              : forGroup(moment, starting, held, silentFrom, whole);
      moments.add(own);
      gripsOfLine.add(whole ? grips.get(m) : grips(own));
      silentFrom = Math.max(silentFrom, own.startMicros() + own.soundMicros());
    }
    ImmutableList<Moment> all = moments.build();
    return all.isEmpty() ? Optional.empty() : Optional.of(line(all, gripsOfLine.build()));
  }

  /** Returns the moment as one group has it, with its own duration and rest. */
  private static Moment forGroup(
      Moment moment,
      ImmutableList<Note> starting,
      ImmutableList<Note> held,
      long silentFrom,
      boolean whole) {
    double share = whole ? 1 : longest(starting) / longest(moment.starting());
    return with(
        moment,
        starting,
        held,
        Math.round(moment.soundMicros() * share),
        silentFrom == 0 ? 0 : Math.max(0, moment.startMicros() - silentFrom));
  }

  /** Returns the longest duration; 1 for grace notes, which have none. */
  private static double longest(ImmutableList<Note> notes) {
    double longest = 0;
    for (Note note : notes) {
      longest = Math.max(longest, note.length().doubleValue());
    }
    return longest == 0 ? 1 : longest;
  }

  /** Returns the easy grips, or all grips where words ask for a string that may need others. */
  private ImmutableList<ImmutableList<Grip>> candidates(
      ImmutableList<Moment> moments, ImmutableList<ImmutableList<Grip>> grips) {
    ImmutableList<ImmutableList<Grip>> easy = easyGrips.of(passage.instrument(), moments, grips);
    if (passage.stringWords().isEmpty()) {
      return easy;
    }
    List<ImmutableList<Grip>> all = new ArrayList<>(easy);
    for (PrintedString words : passage.stringWords()) {
      momentsOn(moments, words).stream().forEach(m -> all.set(m, grips.get(m)));
    }
    return ImmutableList.copyOf(all);
  }

  private PlayerLine line(ImmutableList<Moment> moments, ImmutableList<ImmutableList<Grip>> grips) {
    Passage music =
        new Passage(
            passage.title(),
            passage.partId(),
            passage.partName(),
            passage.instrument(),
            passage.tempi(),
            passage.measures(),
            moments,
            passage.remarks(),
            passage.stringWords());
    Plan plan = planners.of(music, candidates(moments, grips)).plan(Brief.free("check"));
    return new PlayerLine(grips, plan, MeasureLimits.of(plan, playerSpeed));
  }

  /** Returns the indices of the moments that words ask to be played on one string. */
  public static BitSet momentsOn(List<Moment> moments, PrintedString words) {
    int low = 0;
    int high = moments.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (moments.get(middle).place().measureIndex() < words.from().measureIndex()) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    BitSet onString = new BitSet();
    for (int m = low; m < moments.size(); m++) {
      if (moments.get(m).place().measureIndex() > words.to().measureIndex()) {
        break;
      }
      onString.set(m, words.appliesTo(moments.get(m)));
    }
    return onString;
  }
}
