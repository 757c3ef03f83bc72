package loopwright.geometry;

/** From where to where a box reaches along one axis. */
public record Edges(Sum from, Sum to) {}
