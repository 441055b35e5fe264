package fingering.page.view;

/**
 * A term and what it means.
 *
 * @param term the term
 * @param meaning what it means
 */
public record Term(String term, String meaning) {}
