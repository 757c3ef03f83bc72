package loopwright.loop.study;

/**
 * What one change does to the coolant over the room.
 *
 * @param what is changed
 * @param step that was taken, with its unit
 * @param kelvin how much warmer the coolant gets by it; below 0: cooler
 */
public record Effect(String what, String step, double kelvin) {}
