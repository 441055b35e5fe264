package fingering.page.view;

/**
 * A line of music beside a finding.
 *
 * @param line the drawing
 * @param width its width in pixels, as text
 */
public record FoundLine(Music.Line line, String width) {}
