package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.timeline.PartTimeline;
import fingering.tables.Instruments;
import jakarta.xml.bind.Unmarshaller;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.audiveris.proxymusic.ScorePart;
import org.audiveris.proxymusic.ScorePartwise;

/**
 * Reads the parts of a score while the XML binding parses it, and discards the objects of each
 * measure as soon as it is read. They need ten times the memory of the result.
 */
final class ScoreListener extends Unmarshaller.Listener {

  /**
   * A part, its music so far, and the error that stopped its reading. The music of a stopped part
   * is dropped.
   */
  private static final class PartState {
    private final ScorePartwise.Part part;
    private PartReader reader;
    private Optional<UnreadableScoreException> fault = Optional.empty();

    PartState(ScorePartwise.Part part, PartReader reader) {
      this.part = part;
      this.reader = reader;
    }

    void measure(ScorePartwise.Part.Measure measure) {
      if (fault.isPresent()) {
        return;
      }
      try {
        reader.measure(measure);
      } catch (UnreadableScoreException e) {
        fault = Optional.of(e);
        reader = reader.restarted();
      }
    }

    PartTimeline end() {
      try {
        return reader.end();
      } catch (UnreadableScoreException e) {
        fault = Optional.of(e);
        return reader.restarted().end();
      }
    }
  }

  private final Instruments instruments = Instruments.standard();
  private final List<ScorePart> listed = new ArrayList<>();
  private final List<PartState> parts = new ArrayList<>();
  private boolean empty = true;

  @Override
  public void afterUnmarshal(Object read, Object parent) {
    if (read instanceof ScorePart entry) {
      listed.add(entry);
    } else if (read instanceof ScorePartwise.Part.Measure measure
        && parent instanceof ScorePartwise.Part part) {
      empty = false;
      state(part).measure(measure);
      measure.getNoteOrBackupOrForward().clear();
    } else if (read instanceof ScorePartwise.Part part) {
      state(part);
    }
  }

  private PartState state(ScorePartwise.Part part) {
    int index = parts.size();
    if (index > 0 && parts.get(index - 1).part == part) {
      return parts.get(index - 1);
    }
    PartState created =
        new PartState(part, new PartReader(index, PartSigns.name(index + 1, entry(part, index))));
    parts.add(created);
    return created;
  }

  private Optional<ScorePart> entry(ScorePartwise.Part part, int index) {
    return part.getId() instanceof ScorePart named
        ? Optional.of(named)
        : listed.stream().skip(index).findFirst();
  }

  /** Returns whether no part has a measure. */
  boolean empty() {
    return empty;
  }

  /**
   * Returns the score. A part that cannot be read is left out, and refused only if it is requested.
   *
   * @param remarks other assumptions made in reading, one sentence each
   * @throws UnreadableScoreException if no part can be read
   */
  Score score(String title, ImmutableList<String> remarks) {
    ImmutableList.Builder<PartSigns> signs = ImmutableList.builder();
    ImmutableList.Builder<PartTimeline> timelines = ImmutableList.builder();
    ImmutableMap.Builder<Integer, UnreadableScoreException> faults = ImmutableMap.builder();
    for (int i = 0; i < parts.size(); i++) {
      PartState state = parts.get(i);
      timelines.add(state.end());
      signs.add(PartSigns.of(i + 1, entry(state.part, i), state.reader, instruments));
      int number = i + 1;
      state.fault.ifPresent(fault -> faults.put(number, fault));
    }
    ImmutableMap<Integer, UnreadableScoreException> unread = faults.buildOrThrow();
    if (unread.size() == parts.size()) {
      throw unread.get(1);
    }
    return new Score(
        title,
        new InstrumentDetector(instruments).describe(signs.build()),
        timelines.build(),
        unread,
        remarks);
  }
}
