package loopwright.fit;

/**
 * A shape on a mount within one range of positions.
 *
 * @param id number among all hangs of the search, in order of making
 */
record Hang(int id, MountFrame frame, Shape shape, Range range, Occupant occupant) {}
