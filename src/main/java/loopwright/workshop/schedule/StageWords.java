package loopwright.workshop.schedule;

import loopwright.catalog.standard.WorkStage;

/** What a builder calls a stage, and what to take care of in it. */
public final class StageWords {

    private StageWords() {}

    /** The stage in words. */
    public static String of(WorkStage stage) {
        return switch (stage) {
            case STRIP -> "strip the case";
            case MEASURE -> "measure the case and the parts";
            case DRY_FIT -> "whole dry fit, then out again";
            case MARK -> "mark out";
            case CUT -> "cut and drill";
            case DEBURR -> "deburr";
            case SECOND_DRY_FIT -> "second dry fit, screws of final length, then out again";
            case TEST_PIECE -> "test piece, the same coats";
            case PREP -> "degrease, key, mask";
            case PRIME -> "prime";
            case COLOUR -> "colour";
            case CLEAR -> "clear coat";
            case CURE -> "cure";
            case ASSEMBLE -> "assemble";
            case PLUMB -> "cut and fit tube";
            case AIR_TEST -> "air test";
            case FILL -> "fill and bleed";
            case LEAK_WATCH -> "leak watch, pump only";
            case BURN_IN -> "burn-in and tuning";
            case CLEAN -> "clean, photograph, pack";
            case HANDOVER -> "hand over";
        };
    }

    /** What goes on while a stage rests, in words. */
    public static String rest(WorkStage stage) {
        return switch (stage) {
            case TEST_PIECE -> "test piece hardens, then the tape test";
            case PREP -> "solvent dries off";
            case PRIME -> "primer dries before it is flatted";
            case CURE -> "paint hardens";
            case AIR_TEST -> "the loop holds air";
            case LEAK_WATCH -> "leak watch, pump running";
            case BURN_IN -> "burn-in runs";
            default -> "it sets";
        };
    }

    /** The usual caution; empty where none is usual. It never replaces local codes, makers' sheets, licensed practice. */
    public static String caution(WorkStage stage) {
        return switch (stage) {
            case CUT, MARK, DEBURR ->
                "Goggles and face shield, cut-resistant gloves but none near rotating tools, ears, sparks"
                        + " away from solvents; no supply in the case. Local codes and the tool maker's sheet rule.";
            case TEST_PIECE, PREP, PRIME, COLOUR, CLEAR ->
                "Solvent and spray: fresh air, the mask the can's sheet asks for; filter masks do"
                        + " not stop isocyanate: single-component paint or a licensed paint shop. No flame, no sparks.";
            case ASSEMBLE ->
                "Mains unplugged; never open a supply, mains inlets only by those allowed locally. Two people lift"
                        + " a heavy or glass-sided machine.";
            case AIR_TEST ->
                "No more than 0.3 bar with glass or acrylic, else 0.5 bar, unless the makers say otherwise; goggles.";
            case FILL ->
                "Coolant: ethylene glycol is poison, keep it from children and animals; mains unplugged, spills wiped,"
                        + " waste by the local rule.";
            case LEAK_WATCH -> "Only the pump is powered; somebody stays for the first 4 h; dry before any mains.";
            case BURN_IN -> "Not left alone until temperatures stand; never a hand into a fan.";
            case CLEAN, HANDOVER ->
                "A filled machine is heavy: two people lift, carried upright, drained for transport.";
            default -> "";
        };
    }
}
