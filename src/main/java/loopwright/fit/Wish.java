package loopwright.fit;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Pattern;
import loopwright.fit.rules.Role;

/** One thing that is wished of what fits; see why.md for each. */
public sealed interface Wish {

    /** As it was written; two wishes of one text are one wish. */
    String text();

    /**
     * A radiator on one of some mounts.
     *
     * @param mounts ids; several mean "on one of them"
     */
    record RadiatorAt(String text, List<String> mounts, Pick pick) implements Wish {
        /** Copies. */
        public RadiatorAt {
            mounts = List.copyOf(mounts);
        }
    }

    /**
     * Which radiators will do; what is absent does not matter.
     *
     * @param thicknessHmm hundredths of a millimetre
     * @param id of the very part
     */
    record Pick(Optional<Pattern> pattern, Optional<Integer> thicknessHmm, Optional<String> id) {
        /** Any radiator of the brief. */
        public static final Pick ANY = new Pick(Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** No radiator on a mount. */
    record NothingAt(String text, String mount) implements Wish {}

    /** A part in a role. */
    record PartIs(String text, Role role, String id) implements Wish {}

    /** A mod that is done. */
    record ModDone(String text, String mod) implements Wish {}

    /** A mod that is kept out. */
    record ModNotDone(String text, String mod) implements Wish {}
}
