package loopwright.catalog.brief;

import java.util.List;
import java.util.Optional;

/** What a client wants: the machine, the loop, the limits, and the workshop's terms. */
public record Brief(
        String id,
        String title,
        String client,
        List<String> chassis,
        Wanted parts,
        LoopWish loop,
        BriefLimits limits,
        Terms terms,
        Optional<Look> look,
        Optional<WorkCalendar> calendar) {

    /** A brief that says nothing of colours and of the days that are worked. */
    public Brief(
            String id,
            String title,
            String client,
            List<String> chassis,
            Wanted parts,
            LoopWish loop,
            BriefLimits limits,
            Terms terms) {
        this(id, title, client, chassis, parts, loop, limits, terms, Optional.empty(), Optional.empty());
    }
}
