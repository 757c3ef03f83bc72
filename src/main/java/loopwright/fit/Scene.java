package loopwright.fit;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * A chassis with one mod set: what is built in, which placings of the parts stand in it without a clash, and what can
 * hang on each mount.
 *
 * @param builtIn numbers of the built-in bodies
 * @param settings the placings that do not clash with what is built in, with the walls, or in themselves
 * @param options what each mount can carry, mount by mount
 */
record Scene(ModSet mods, List<Integer> builtIn, List<Setting> settings, List<List<Option>> options) {

    /**
     * One placing of the parts.
     *
     * @param bodies numbers of its bodies
     * @param marginHmm the smallest margin among bodies that do not slide
     */
    record Setting(PartSet parts, PlaceModel.Placing placing, List<Integer> bodies, int marginHmm) {}

    /**
     * A shape on a mount: the ranges it may hang in, and the settings it can go with.
     *
     * @param shape index of the shape among all shapes
     * @param settings those in which it can stand for all that is known of single pairs
     * @param free those in which its only hang stands wherever it is: nothing is left to ask
     */
    record Option(int mount, int shape, List<Hung> hung, BitSet settings, BitSet free) {

        /** The hang, when there is only one. */
        Optional<Hang> onlyHang() {
            return hung.size() == 1 ? Optional.of(hung.get(0).hang()) : Optional.empty();
        }
    }

    /** A hang, and what its positions must still keep clear of among walls and built-in bodies. */
    record Hung(Hang hang, List<int[]> open) {}
}
