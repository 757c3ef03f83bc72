package loopwright.power.cable;

import java.util.List;

/**
 * What plugs of one kind a machine wants fed, as lengths in whole millimetres.
 *
 * @param fromSupplyMm for each of them, the length wanted from the supply
 * @param betweenMm for each pair, the length wanted from one to the other; 0 from one to itself
 */
public record Wants(List<Integer> fromSupplyMm, List<List<Integer>> betweenMm) {

    /** Copies, and refuses what does not go together. */
    public Wants {
        fromSupplyMm = List.copyOf(fromSupplyMm);
        betweenMm = betweenMm.stream().map(List::copyOf).toList();
        int count = fromSupplyMm.size();
        if (betweenMm.size() != count || betweenMm.stream().anyMatch(b -> b.size() != count)) {
            throw new IllegalArgumentException("betweenMm must have a row and a column for each wanted plug");
        }
    }

    int count() {
        return fromSupplyMm.size();
    }
}
