package loopwright.rank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.fit.FitCase;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.Shape;
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
    private final List<Integer> duties;
    private final Map<Place, AirPath> paths = new HashMap<>();
    private final Map<Question, Slot> slots = new HashMap<>();
    private final Map<String, Double> conductances = new HashMap<>();

    Fittings(FitCase fitCase) {
        this.fitCase = fitCase;
        this.air = new StackAir(fitCase);
        this.duties = duties(fitCase);
    }

    /** The grid of duties, full duty first. */
    List<Integer> dutiesPercent() {
        return duties;
    }

    private static List<Integer> duties(FitCase fitCase) {
        List<Integer> out = new ArrayList<>();
        int step = fitCase.brief().terms().dutyStepPercent();
        for (int duty = FULL_PERCENT; duty > 0; duty -= step) {
            out.add(duty);
        }
        return List.copyOf(out);
    }

    /**
     * What can be fitted to a stack, and the best of it, each figure by itself.
     *
     * @param all every one
     * @param drawingIn without those that another beats whatever the rest; only true of a mount that draws in: at one
     *     that blows out, less conductance can be cooler
     */
    record Slot(List<Fitting> all, List<Fitting> drawingIn, Floor floor) {}

    /** The least price, sound and lead time, and the largest conductance, of some fittings. */
    record Floor(long cents, double conductanceWPerK, long soundMillionths, int leadDays) {

        static Floor of(Fitting fitting) {
            return new Floor(
                    fitting.cents(), fitting.conductanceWPerK(), fitting.sound().millionths(), fitting.leadDays());
        }

        private static Floor of(List<Fitting> all) {
            Floor out = of(all.get(0));
            for (Fitting fitting : all) {
                Floor one = of(fitting);
                out = new Floor(
                        Math.min(out.cents, one.cents),
                        Math.max(out.conductanceWPerK, one.conductanceWPerK),
                        Math.min(out.soundMillionths, one.soundMillionths),
                        Math.min(out.leadDays, one.leadDays));
            }
            return out;
        }
    }

    private record Place(int mount, Pattern pattern, ModSet mods) {}

    private record Question(int mount, Shape shape, AirPath path, int dutyPercent) {}

    /** The best of each figure at any duty: conductance at full duty, sound at the least. */
    List<Floor> atAnyDuty(List<Stack> stacks, ModSet mods) {
        List<Integer> duties = dutiesPercent();
        List<Floor> out = new ArrayList<>(stacks.size());
        for (Stack stack : stacks) {
            Floor loud = of(stack, mods, duties.get(0)).floor();
            Floor quiet = of(stack, mods, duties.get(duties.size() - 1)).floor();
            out.add(new Floor(loud.cents(), loud.conductanceWPerK(), quiet.soundMillionths(), loud.leadDays()));
        }
        return out;
    }

    /** The fittings of a stack at a duty with a mod set. */
    Slot of(Stack stack, ModSet mods, int dutyPercent) {
        AirPath path = paths.computeIfAbsent(
                new Place(stack.frame().index(), stack.shape().pattern(), mods),
                p -> air.path(stack.frame().mount(), p.pattern(), mods));
        return slots.computeIfAbsent(new Question(stack.frame().index(), stack.shape(), path, dutyPercent), k -> {
            List<Fitting> made = make(stack, path, dutyPercent);
            return new Slot(
                    made,
                    made.stream()
                            .filter(f -> made.stream().noneMatch(f::isBeatenBy))
                            .toList(),
                    Floor.of(made));
        });
    }

    private List<Fitting> make(Stack stack, AirPath path, int dutyPercent) {
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
        return List.copyOf(all);
    }

    private double conductance(Radiator radiator, FanBank bank, AirPath path) {
        String key = radiator.id() + "|" + bank.fan().id() + "|" + bank.layers() + "|" + bank.speedShare() + "|" + path;
        return conductances.computeIfAbsent(
                key, k -> RadiatorAir.operatingPoint(radiator, bank, path).conductanceWPerK());
    }
}
