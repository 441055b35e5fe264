package fingering.page;

import com.google.common.collect.ImmutableList;
import fingering.practice.Circle;
import java.util.Optional;

/**
 * What a page on the practice of a plan shows.
 *
 * @param title the title, not empty
 * @param heading what is practised until when, and how far that is reachable
 * @param day the date of the first day, in words
 * @param today what to do on it
 * @param spots practice spots, a paragraph each; may be empty
 * @param columns the heads of the columns of the ladder
 * @param rows its days; a row may be shorter than there are columns
 * @param figures what the figures mean
 * @param circles what to circle in the part
 * @param progress the progress in the journal as a picture in SVG; empty where there is none
 * @param journal what else is to be said of the journal; may be empty
 * @param care the caution on strain, and who has the last word
 */
public record PracticeContent(
    String title,
    ImmutableList<String> heading,
    String day,
    ImmutableList<String> today,
    ImmutableList<String> spots,
    ImmutableList<String> columns,
    ImmutableList<ImmutableList<String>> rows,
    String figures,
    ImmutableList<Circle> circles,
    Optional<String> progress,
    ImmutableList<String> journal,
    String care) {}
