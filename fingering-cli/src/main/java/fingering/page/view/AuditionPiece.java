package fingering.page.view;

import com.google.common.collect.ImmutableList;
import gg.jte.Content;

/**
 * A piece of an audition.
 *
 * @param id the id of its section
 * @param title its number and name
 * @param lines its positions, and remarks on it
 * @param signs what the signs in the music mean; empty if that is said before
 * @param music the music with its plan
 */
public record AuditionPiece(
    String id, String title, ImmutableList<String> lines, String signs, Content music) {}
