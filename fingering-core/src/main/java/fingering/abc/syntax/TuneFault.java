package fingering.abc.syntax;

/**
 * A place in the text of a tune that is probably a typing error.
 *
 * @param line its line, from 1
 * @param column its column, from 1
 * @param what what is wrong and what was done instead, without full stop
 */
public record TuneFault(int line, int column, String what) {}
