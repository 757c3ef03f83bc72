package loopwright.rank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.fit.FitCase;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.loop.AirPath;
import loopwright.loop.Duty;
import loopwright.loop.FanBank;
import loopwright.loop.RadiatorAir;
import loopwright.loop.Sound;
import loopwright.loop.SoundPower;

/** Every way to fit real parts to a stack, at each duty of the brief's grid; computed once and kept. */
final class Fittings {

    /** Full duty, percent. */
    private static final int FULL_PERCENT = 100;

    private final FitCase fitCase;
    private final StackAir air;
    private final Map<String, List<Fitting>> known = new HashMap<>();
    private final Map<String, Double> conductances = new HashMap<>();

    Fittings(FitCase fitCase) {
        this.fitCase = fitCase;
        this.air = new StackAir(fitCase);
    }

    /** The grid of duties, full duty first. */
    List<Integer> dutiesPercent() {
        List<Integer> out = new ArrayList<>();
        int step = fitCase.brief().terms().dutyStepPercent();
        for (int duty = FULL_PERCENT; duty > 0; duty -= step) {
            out.add(duty);
        }
        return List.copyOf(out);
    }

    /**
     * The fittings of a stack at a duty with a mod set, without those that another beats whatever the rest.
     *
     * @param blowsOut whether it breathes warmed air: then more conductance may be hotter, and is no reason to leave out less
     */
    List<Fitting> of(Stack stack, ModSet mods, int dutyPercent, boolean blowsOut) {
        AirPath path = air.path(stack.frame().mount(), stack.shape().pattern(), mods);
        String key = stack.frame().index() + stack.shape().text() + path + dutyPercent + blowsOut;
        return known.computeIfAbsent(key, k -> make(stack, path, dutyPercent, blowsOut));
    }

    private List<Fitting> make(Stack stack, AirPath path, int dutyPercent, boolean blowsOut) {
        List<Fitting> all = new ArrayList<>();
        int layers = stack.shape().arrangement().fanLayers();
        for (Fan fan : fitCase.shapes().fansOf(stack.shape())) {
            int fans = layers * stack.shape().pattern().fans();
            SoundPower sound =
                    SoundPower.ofDBA(Sound.levelDBA(fan, new Duty(dutyPercent))).times(fans);
            if (!stack.shape().arrangement().hasRadiator()) {
                all.add(new Fitting(
                        stack,
                        Optional.empty(),
                        fan,
                        fans,
                        fans * fan.buy().priceCents(),
                        fan.buy().leadDays(),
                        0,
                        sound));
            }
            for (Radiator radiator : fitCase.shapes().radiatorsOf(stack.shape())) {
                all.add(new Fitting(
                        stack,
                        Optional.of(radiator),
                        fan,
                        fans,
                        radiator.buy().priceCents() + fans * fan.buy().priceCents(),
                        Math.max(radiator.buy().leadDays(), fan.buy().leadDays()),
                        conductance(radiator, new FanBank(fan, layers, new Duty(dutyPercent)), path),
                        sound));
            }
        }
        return all.stream()
                .filter(f -> all.stream().noneMatch(o -> f.isBeatenBy(o, blowsOut)))
                .toList();
    }

    private double conductance(Radiator radiator, FanBank bank, AirPath path) {
        String key = radiator.id() + bank.fan().id() + bank.layers() + bank.speedShare() + path;
        return conductances.computeIfAbsent(
                key, k -> RadiatorAir.operatingPoint(radiator, bank, path).conductanceWPerK());
    }
}
