package loopwright.answer.why;

import java.util.Locale;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.fit.Wish;
import loopwright.quantity.Hundredths;

/** Wishes in words. */
final class WishWords {

    private WishWords() {}

    /** What is wished, without "you want". */
    static String of(Wish wish, Chassis chassis) {
        if (wish instanceof Wish.RadiatorAt at) {
            return radiator(at.pick()) + " "
                    + (at.mounts().size() == 1 ? "at the " + at.mounts().get(0) : "on some mount");
        } else if (wish instanceof Wish.NothingAt nothing) {
            return "no radiator at the " + nothing.mount();
        } else if (wish instanceof Wish.PartIs part) {
            return part.id() + " as the " + part.role().word();
        } else if (wish instanceof Wish.ModDone done) {
            return mod(done.mod(), chassis) + " done";
        } else if (wish instanceof Wish.ModNotDone not) {
            return mod(not.mod(), chassis) + " not done";
        }
        throw new IllegalStateException("a wish that has no words: " + wish);
    }

    private static String radiator(Wish.Pick pick) {
        if (pick.id().isPresent()) {
            return "the radiator " + pick.id().get();
        }
        if (pick.pattern().isEmpty()) {
            return "a radiator of the brief";
        }
        return "a " + pick.pattern().get() + " radiator"
                + pick.thicknessHmm().map(t -> " " + mm(t) + " mm thick").orElse("");
    }

    /** A mod by title and id. */
    static String mod(String id, Chassis chassis) {
        return "\""
                + chassis.mods().stream()
                        .filter(m -> m.id().equals(id))
                        .map(Mod::title)
                        .findFirst()
                        .orElse(id)
                + "\" (" + id + ")";
    }

    /** Millimetres without needless zeros. */
    static String mm(int hmm) {
        String text = Hundredths.toMm(hmm).stripTrailingZeros().toPlainString();
        return text.toLowerCase(Locale.ROOT);
    }
}
