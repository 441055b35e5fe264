package fingering.page.view;

import gg.jte.Content;
import java.util.Optional;

/**
 * A spot to practise, drawn.
 *
 * @param measures its measures as printed
 * @param text what is hard there, and how to practise it
 * @param music its exercise in notes; empty if it has none
 */
public record SpotView(String measures, String text, Optional<Content> music) {}
