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
 * Shares the music of a part out among its players: the whole of it for one; for a section that
 * divides, a line for each group. What no player can play is left out, and the rest is planned.
 */
public final class PlayerLines {
  /** Further groups are not told apart. */
  private static final int MOST = 4;

  private final Passage passage;
  private final PlannerFactory planners;
  private final GripFinder finder;
  private final EasyGrips easy;
  private final PlayerSpeed tempo;
  private final Map<NoteAddress, Integer> lower = new HashMap<>();

  public PlayerLines(Passage passage, PlannerFactory planners, EasyGrips easy, PlayerSpeed tempo) {
    this.passage = passage;
    this.planners = planners;
    finder = planners.finder(passage.instrument());
    this.easy = easy;
    this.tempo = tempo;
  }

  /** A moment without its notes out of range; empty where no note is left. */
  public Optional<Moment> playable(Moment moment) {
    ImmutableList<Note> left =
        moment.starting().stream()
            .filter(note -> !ways(with(moment, ImmutableList.of(note))).isEmpty())
            .collect(ImmutableList.toImmutableList());
    return left.isEmpty() ? Optional.empty() : Optional.of(with(moment, left));
  }

  /** Every grip of a moment; empty where a note that begins lies out of range. */
  public ImmutableList<Grip> ways(Moment moment) {
    return finder.grips(moment);
  }

  /** The same moment where these notes begin and none is held. */
  public static Moment with(Moment moment, ImmutableList<Note> starting) {
    return with(moment, starting, ImmutableList.of(), moment.soundMicros(), moment.restMicros());
  }

  private static Moment with(
      Moment moment,
      ImmutableList<Note> starting,
      ImmutableList<Note> held,
      long soundMicros,
      long restMicros) {
    return new Moment(
        starting,
        held,
        moment.startMicros(),
        soundMicros,
        restMicros,
        moment.slurred(),
        moment.grace(),
        moment.pizzicato(),
        moment.meanNoteMicros());
  }

  /**
   * The lines of a part, planned; none where nothing can be played.
   *
   * @param ways the grips of each moment that can be played
   */
  public ImmutableList<PlayerLine> of(
      ImmutableList<Optional<Moment>> playable,
      ImmutableList<ImmutableList<Grip>> ways,
      Players players,
      PrintedNoteIndex prints) {
    int groups = 1;
    for (int m = 0; m < playable.size(); m++) {
      if (playable.get(m).isPresent() && players.canDivide(m)) {
        groups = Math.max(groups, divide(m, playable.get(m).get(), ways.get(m), players, prints));
      }
    }
    ImmutableList.Builder<PlayerLine> lines = ImmutableList.builder();
    for (int group = 0; group < groups; group++) {
      line(group, playable, ways).ifPresent(lines::add);
    }
    return lines.build();
  }

  /** Notes which notes of a moment are not for the first group, and tells how many groups play. */
  private int divide(
      int m, Moment moment, ImmutableList<Grip> ways, Players players, PrintedNoteIndex prints) {
    boolean apart = players.divided().get(m) || ways.get(0).divided();
    if (moment.starting().size() + moment.held().size() == 1 || !(apart || players.divides(m))) {
      return 1;
    }
    if (players.voices().get(m) && !ways.isEmpty()) {
      return byVoice(moment, prints);
    }
    int size = moment.starting().size();
    for (int i = 0; i < size; i++) {
      mark(moment.starting().get(i), size - 1 - i);
    }
    return Math.min(MOST, size);
  }

  private int byVoice(Moment moment, PrintedNoteIndex prints) {
    List<String> voices = new ArrayList<>();
    for (Note note : moment.sounding()) {
      String voice = prints.voice(note);
      if (!voices.contains(voice)) {
        voices.add(voice);
      }
    }
    voices.sort(null);
    for (Note note : moment.starting()) {
      mark(note, voices.indexOf(prints.voice(note)));
    }
    return Math.min(MOST, voices.size());
  }

  private void mark(Note note, int group) {
    if (group > 0) {
      lower.put(note.address(), Math.min(group, MOST - 1));
    }
  }

  private ImmutableList<Note> of(int group, ImmutableList<Note> notes) {
    return lower.isEmpty()
        ? notes
        : notes.stream()
            .filter(note -> lower.getOrDefault(note.address(), 0) == group)
            .collect(ImmutableList.toImmutableList());
  }

  private Optional<PlayerLine> line(
      int group,
      ImmutableList<Optional<Moment>> playable,
      ImmutableList<ImmutableList<Grip>> ways) {
    ImmutableList.Builder<Moment> moments = ImmutableList.builder();
    ImmutableList.Builder<ImmutableList<Grip>> grips = ImmutableList.builder();
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
          whole && lower.isEmpty() ? moment : alone(moment, starting, held, silentFrom, whole);
      moments.add(own);
      grips.add(whole ? ways.get(m) : ways(own));
      silentFrom = Math.max(silentFrom, own.startMicros() + own.soundMicros());
    }
    ImmutableList<Moment> all = moments.build();
    return all.isEmpty() ? Optional.empty() : Optional.of(line(all, grips.build()));
  }

  private static Moment alone(
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

  /** The length of the longest; grace notes, which have none, are alike. */
  private static double longest(ImmutableList<Note> notes) {
    double longest = 0;
    for (Note note : notes) {
      longest = Math.max(longest, note.length().doubleValue());
    }
    return longest == 0 ? 1 : longest;
  }

  /** The easy ways, but all where words ask for a string, on which they may not lie. */
  private ImmutableList<ImmutableList<Grip>> worth(
      ImmutableList<Moment> moments, ImmutableList<ImmutableList<Grip>> ways) {
    ImmutableList<ImmutableList<Grip>> worth = easy.of(passage.instrument(), moments, ways);
    if (passage.oneString().isEmpty()) {
      return worth;
    }
    List<ImmutableList<Grip>> all = new ArrayList<>(worth);
    for (PrintedString asked : passage.oneString()) {
      concerned(moments, asked).stream().forEach(m -> all.set(m, ways.get(m)));
    }
    return ImmutableList.copyOf(all);
  }

  private PlayerLine line(ImmutableList<Moment> moments, ImmutableList<ImmutableList<Grip>> ways) {
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
            passage.oneString());
    Plan plan = planners.of(music, worth(moments, ways)).plan(Brief.free("check"));
    return new PlayerLine(ways, plan, MeasureLimits.of(plan, tempo));
  }

  /** The moments that words ask for on one string. */
  public static BitSet concerned(List<Moment> moments, PrintedString asked) {
    int low = 0;
    int high = moments.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (moments.get(middle).place().measureIndex() < asked.from().measureIndex()) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    BitSet concerned = new BitSet();
    for (int m = low; m < moments.size(); m++) {
      if (moments.get(m).place().measureIndex() > asked.to().measureIndex()) {
        break;
      }
      concerned.set(m, asked.concerns(moments.get(m)));
    }
    return concerned;
  }
}
