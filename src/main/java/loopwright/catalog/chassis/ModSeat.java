package loopwright.catalog.chassis;

/** A hole pattern that a mod makes on a mount. */
public record ModSeat(String mount, Mount.Seat seat) {}
