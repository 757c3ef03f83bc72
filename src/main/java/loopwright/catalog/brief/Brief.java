package loopwright.catalog.brief;

import java.util.List;

/** What a client wants: the machine, the loop, the limits, and the workshop's terms. */
public record Brief(
        String id,
        String title,
        String client,
        List<String> chassis,
        Wanted parts,
        LoopWish loop,
        BriefLimits limits,
        Terms terms) {}
