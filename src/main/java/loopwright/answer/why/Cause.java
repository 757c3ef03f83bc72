package loopwright.answer.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.Steady;
import loopwright.loop.study.Effect;
import loopwright.loop.study.Sensitivities;

/**
 * What keeps the coolant of a build warm most: too little area, too little free area, air that was warmed inside, or too little
 * coolant flow.
 *
 * <p>Area, free area and flow: the best single step of {@link Sensitivities}. Recirculated air: how much warmer the air inside is than the
 * room, in the share of the heat that radiators which blow out carry off.
 *
 * @param name in the builder's words
 * @param gainK how much cooler the coolant would be for that step, K, above 0
 * @param step what the step is
 */
public record Cause(String name, double gainK, String step) {

    /** The causes, the one that matters most first; none without a steady state. */
    static List<Cause> of(MachineModel model, Machine machine) {
        List<Cause> out = new ArrayList<>();
        List<Effect> effects = Sensitivities.of(model, machine);
        best(effects, "length of the radiator").ifPresent(e -> out.add(cause("too little radiator area", e)));
        best(effects, "free area").ifPresent(e -> out.add(cause("too little free area", e)));
        best(effects, "coolant flow").ifPresent(e -> out.add(cause("too little coolant flow (pump)", e)));
        model.solve(machine).found().flatMap(Cause::recirculated).ifPresent(out::add);
        out.sort(Comparator.comparingDouble(Cause::gainK).reversed().thenComparing(Cause::name));
        return List.copyOf(out);
    }

    private static Optional<Effect> best(List<Effect> effects, String start) {
        return effects.stream()
                .filter(e -> e.what().startsWith(start) && e.kelvin() < 0)
                .min(Comparator.comparingDouble(Effect::kelvin));
    }

    private static Cause cause(String name, Effect effect) {
        return new Cause(name, -effect.kelvin(), effect.what() + " " + effect.step());
    }

    private static Optional<Cause> recirculated(Steady state) {
        double warmedWK = 0;
        double allW = 0;
        for (Steady.RadiatorState radiator : state.radiators()) {
            allW += radiator.heatW();
            warmedWK += radiator.heatW() * (radiator.inletC() - state.roomC());
        }
        double gainK = allW > 0 ? warmedWK / allW : 0;
        return gainK > 0
                ? Optional.of(new Cause(
                        "air warmed inside before the radiators that blow out",
                        gainK,
                        String.format(Locale.ROOT, "air inside %.1f K over the room", state.caseOverRoomK())))
                : Optional.empty();
    }
}
