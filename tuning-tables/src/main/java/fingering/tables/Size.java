package fingering.tables;

/**
 * A size in which an instrument is built.
 *
 * @param instrument id of the instrument
 * @param name its name: 3/4, or inches of the body for a viola
 * @param stringLength nut to bridge, in millimetres
 * @param reach millimetres between first and fourth finger of a medium hand that the size fits
 */
public record Size(String instrument, String name, double stringLength, double reach) {}
