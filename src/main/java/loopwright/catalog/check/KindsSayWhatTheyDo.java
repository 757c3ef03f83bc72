package loopwright.catalog.check;

import java.util.List;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.read.Problems;

/** A mod of a kind has the effect that the kind is named for. */
final class KindsSayWhatTheyDo implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            List<Mod> mods = chassis.value().mods();
            for (int i = 0; i < mods.size(); i++) {
                Mod mod = mods.get(i);
                if (!does(mod.kind(), mod.effect())) {
                    problems.add(chassis.item()
                            .problem(
                                    "mods[" + i + "].effect",
                                    "an effect without " + lacking(mod.kind()),
                                    "what the kind of mod says",
                                    "Or give the mod another kind."));
                }
            }
        }
    }

    private static boolean does(Mod.Kind kind, Mod.Effect effect) {
        return switch (kind) {
            case TAKE_OUT -> !effect.removes().isEmpty();
            case RAISE_COVER -> !effect.covers().isEmpty();
            case OPEN_PANEL ->
                effect.airways().stream()
                        .anyMatch(a -> a.cut().isPresent() || a.freeArea().isPresent());
            case DRILL_PATTERN -> !effect.seats().isEmpty();
            case MOVE_DRIVE -> !effect.opensPlaces().isEmpty();
            case FIT_INSERT -> !effect.inserts().isEmpty();
            case CHANGE_FILTER ->
                effect.airways().stream().map(Airway::filterFreeArea).anyMatch(f -> f.isPresent());
            case LONGER_FEET ->
                effect.airways().stream().map(Airway::addedDepthMm).anyMatch(d -> d.isPresent());
            case CUT_HOLE -> !effect.routingHoles().isEmpty();
            case CHANGE_BRACKET, CUT_WINDOW -> true;
        };
    }

    private static String lacking(Mod.Kind kind) {
        return switch (kind) {
            case TAKE_OUT -> "anything it removes";
            case RAISE_COVER -> "a cover";
            case OPEN_PANEL -> "an airway that it opens";
            case DRILL_PATTERN -> "a seat";
            case MOVE_DRIVE -> "a place that it opens";
            case FIT_INSERT -> "an insert";
            case CHANGE_FILTER -> "an airway with another filter";
            case LONGER_FEET -> "an airway with added depth";
            case CUT_HOLE -> "a hole for cables";
            case CHANGE_BRACKET, CUT_WINDOW -> "anything";
        };
    }
}
