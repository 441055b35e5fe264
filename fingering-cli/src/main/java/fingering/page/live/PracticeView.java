package fingering.page.live;

import fingering.page.live.StudentView.Tick;
import fingering.page.view.SpotView;
import java.util.List;

/**
 * The practice page of a lesson.
 *
 * @param address the address of the lesson on the server
 * @param revision counts the changes of the lesson
 * @param date the date of the hearing, {@code 2026-12-12}; empty if it is not known
 * @param tempo the tempo at the hearing; empty if it is not known
 * @param example what to write as a tempo
 * @param days the days of the week; those without practice are ticked
 * @param traditional whether only the marks of a traditional metronome are used
 * @param journal the name of the journal; empty if there is none yet
 * @param stamp what the file of the journal was when it was read
 * @param written the last line if it is of today; empty if there is none to take back
 * @param remark a sentence about the request itself; empty if there is none
 * @param practice what to practise
 * @param spots the spots, drawn
 */
public record PracticeView(
    String address,
    int revision,
    String date,
    String tempo,
    String example,
    List<Tick> days,
    boolean traditional,
    String journal,
    String stamp,
    String written,
    String remark,
    PracticeNow practice,
    List<SpotView> spots) {}
