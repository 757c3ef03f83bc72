package loopwright.catalog.basis;

import loopwright.quantity.Dimension;

/** Outside size of a body along its own three axes. */
public record SizeMm(Dimension lengthMm, Dimension widthMm, Dimension heightMm) {}
