package loopwright.loop.material;

import loopwright.catalog.standard.MaterialPractice;

/** Coolant is changed as often as its maker says, and not more seldom than its colour allows. */
final class CoolantIsChangedInTime implements MaterialRule {

    @Override
    public String id() {
        return "material.change";
    }

    @Override
    public String source() {
        return PRACTICE;
    }

    @Override
    public Said check(LoopMaterials loop) {
        int months = loop.coolant().changeMonths();
        if (loop.coolant().additives().isEmpty()) {
            return Said.ok("change every " + months + " months, as its sheet says");
        }
        MaterialPractice.Months most = loop.practice().months();
        int longest = switch (loop.coolant().additives().orElseThrow().tint()) {
            case CLEAR -> most.clear();
            case DYED -> most.dyed();
            case PIGMENTED -> most.pigmented();
            case GLITTER -> most.glitter();
        };
        return months > longest
                ? Said.warn("its sheet says every " + months + " months; so coloured, change every " + longest)
                : Said.ok("change every " + months + " months");
    }
}
