package loopwright.loop.material;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Tube;
import loopwright.catalog.standard.MaterialPractice;

/**
 * What one loop is made of.
 *
 * @param pieces radiators and blocks
 * @param fittings that may be used
 * @param addedBiocides what the brief adds to the coolant
 * @param warmth of the coolant
 */
public record LoopMaterials(
        List<Piece> pieces,
        Fittings fittings,
        Tube tube,
        Coolant coolant,
        List<Coolant.Biocide> addedBiocides,
        Warmth warmth,
        MaterialPractice practice) {

    /** Copies. */
    public LoopMaterials {
        pieces = List.copyOf(pieces);
        addedBiocides = List.copyOf(addedBiocides);
    }

    /**
     * A radiator or a block.
     *
     * @param name as the builder calls it, with the part's id
     * @param channelMm the narrowest channel, where it is a block that says so
     * @param block whether it is a block
     */
    public record Piece(String name, Wetted wetted, boolean block, Optional<Double> channelMm) {}

    /** A fitting by its id. */
    public record FittingPiece(String id, Wetted wetted) {}

    /**
     * Fittings that may be used.
     *
     * @param named whether the brief names them: then they will be bought
     */
    public record Fittings(List<FittingPiece> all, boolean named) {
        /** Copies. */
        public Fittings {
            all = List.copyOf(all);
        }

        /** Ids of some. */
        String ids(Predicate<Wetted> which) {
            return all.stream()
                    .filter(f -> which.test(f.wetted()))
                    .map(FittingPiece::id)
                    .collect(Collectors.joining(", "));
        }

        /** What it means that some are bad. */
        MaterialVerdict bad() {
            return named ? MaterialVerdict.BROKEN : MaterialVerdict.WARN;
        }

        /** What to do about it. */
        String instead() {
            return named ? "take others" : "do not buy these";
        }
    }

    /**
     * The coolant's temperatures, °C.
     *
     * @param warmestC at full load
     * @param limitC what the brief allows its mean
     */
    public record Warmth(double warmestC, double limitC) {}

    /** Names of the pieces of some material. */
    String names(Predicate<Wetted> which) {
        return pieces.stream()
                .filter(p -> which.test(p.wetted()))
                .map(Piece::name)
                .collect(Collectors.joining(", "));
    }

    /** Whether a piece, or the tube, is of a copper alloy. */
    boolean hasCopper() {
        return pieces.stream().anyMatch(p -> p.wetted().isCopperAlloy()) || hasCopperTube();
    }

    /** Whether the tube is copper. */
    boolean hasCopperTube() {
        return tube.material().filter(m -> m == Tube.Material.COPPER).isPresent();
    }

    /** Whether a piece is aluminium. */
    boolean hasAluminium() {
        return pieces.stream().anyMatch(p -> p.wetted() == Wetted.ALUMINIUM);
    }
}
