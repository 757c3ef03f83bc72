package loopwright.catalog.check;

import loopwright.catalog.read.Problems;

/** One thing that must hold across the items of a catalogue. */
interface Check {
    /** Notes what does not hold. */
    void run(Items items, Problems problems);
}
