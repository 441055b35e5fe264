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
 * Walks through the parts of a score while the binding reads it, and lets each measure go as soon
 * as it is done with: what the binding makes of a score takes ten times the room of what is kept.
 */
final class PartsWalk extends Unmarshaller.Listener {

  /** A part, its music so far, and what made it stop: nothing is told of a part that stopped. */
  private static final class Walked {
    private final ScorePartwise.Part part;
    private PartWalk walk;
    private Optional<UnreadableScoreException> fault = Optional.empty();

    Walked(ScorePartwise.Part part, PartWalk walk) {
      this.part = part;
      this.walk = walk;
    }

    void measure(ScorePartwise.Part.Measure measure) {
      if (fault.isPresent()) {
        return;
      }
      try {
        walk.measure(measure);
      } catch (UnreadableScoreException e) {
        fault = Optional.of(e);
        walk = walk.anew();
      }
    }

    PartTimeline end() {
      try {
        return walk.end();
      } catch (UnreadableScoreException e) {
        fault = Optional.of(e);
        return walk.anew().end();
      }
    }
  }

  private final InstrumentSigns signs = new InstrumentSigns(Instruments.standard());
  private final List<ScorePart> listed = new ArrayList<>();
  private final List<Walked> parts = new ArrayList<>();
  private boolean empty = true;

  @Override
  public void afterUnmarshal(Object read, Object parent) {
    if (read instanceof ScorePart entry) {
      listed.add(entry);
    } else if (read instanceof ScorePartwise.Part.Measure measure
        && parent instanceof ScorePartwise.Part part) {
      empty = false;
      walked(part).measure(measure);
      measure.getNoteOrBackupOrForward().clear();
    } else if (read instanceof ScorePartwise.Part part) {
      walked(part);
    }
  }

  private Walked walked(ScorePartwise.Part part) {
    int index = parts.size();
    if (index > 0 && parts.get(index - 1).part == part) {
      return parts.get(index - 1);
    }
    Walked begun =
        new Walked(part, new PartWalk(index, InstrumentSigns.name(index + 1, entry(part, index))));
    parts.add(begun);
    return begun;
  }

  private Optional<ScorePart> entry(ScorePartwise.Part part, int index) {
    return part.getId() instanceof ScorePart named
        ? Optional.of(named)
        : listed.stream().skip(index).findFirst();
  }

  /** Whether no part has a measure. */
  boolean empty() {
    return empty;
  }

  /**
   * The score that has been read. A part that cannot be read is left out, and is refused only when
   * it is asked for.
   *
   * @param remarks what else was assumed in reading it, a sentence each
   * @throws UnreadableScoreException if no part can be read
   */
  Score score(String title, ImmutableList<String> remarks) {
    ImmutableList.Builder<PartInfo> infos = ImmutableList.builder();
    ImmutableList.Builder<PartTimeline> timelines = ImmutableList.builder();
    ImmutableMap.Builder<Integer, UnreadableScoreException> faults = ImmutableMap.builder();
    for (int i = 0; i < parts.size(); i++) {
      Walked walked = parts.get(i);
      timelines.add(walked.end());
      infos.add(signs.describe(i + 1, entry(walked.part, i), walked.walk));
      int number = i + 1;
      walked.fault.ifPresent(fault -> faults.put(number, fault));
    }
    ImmutableMap<Integer, UnreadableScoreException> unread = faults.buildOrThrow();
    if (unread.size() == parts.size()) {
      throw unread.get(1);
    }
    return new Score(title, infos.build(), timelines.build(), unread, remarks);
  }
}
