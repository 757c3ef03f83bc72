package loopwright.workshop.fasten;

import java.util.Optional;
import loopwright.catalog.part.Screw;
import loopwright.catalog.part.ScrewThread;

/**
 * Screws that the trade uses in one length.
 *
 * @param what they hold
 * @param screw of the stock, if it has this length
 * @param note what to look at; empty where there is nothing
 */
public record FixedSet(String what, ScrewThread thread, int lengthHmm, int count, Optional<Screw> screw, String note) {}
