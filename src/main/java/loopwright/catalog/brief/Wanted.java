package loopwright.catalog.brief;

import java.util.List;
import java.util.Optional;

/** What gives the machine its performance. A supply left out may be any that carries the load. */
public record Wanted(
        Choice board,
        Choice processor,
        Choice card,
        Choice memory,
        List<String> drives,
        Choice processorBlock,
        Optional<Choice> supply) {}
