package fingering.page.live;

import fingering.page.view.Paper;

/**
 * What stands above a handout that the local page shows, and is not printed.
 *
 * @param paper the paper of the handout
 * @param address the address of the handout without its paper
 */
public record SheetBar(Paper paper, String address) {}
