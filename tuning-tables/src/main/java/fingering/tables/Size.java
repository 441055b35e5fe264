package fingering.tables;

/**
 * A size of an instrument.
 *
 * @param instrument id of the instrument
 * @param name the name of the size: 3/4, or the length of the body in inches for a viola
 * @param stringLength from nut to bridge, in millimetres
 * @param reach reach of a medium-sized hand of players of this size, from first to fourth finger,
 *     in millimetres
 */
public record Size(String instrument, String name, double stringLength, double reach) {}
