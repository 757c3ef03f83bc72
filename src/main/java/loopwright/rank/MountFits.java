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
import loopwright.loop.Duty;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.MountSound;
import loopwright.loop.Nudge;
import loopwright.loop.SoundPower;
import loopwright.loop.air.AirDirection;
import org.jspecify.annotations.Nullable;

/**
 * Every way to fit real parts to a stack in some air, at each duty and both ways to blow; made when it is asked for.
 *
 * <p>Prices and sounds are had without any air, as most duties are passed over for those alone.
 */
final class MountFits {

    private final Surroundings around;
    private final List<Fitting> fittings;
    private final Map<Integer, List<Blowing.Loudness>> loudness = new HashMap<>();
    private final Map<Long, Draught> draughts = new HashMap<>();
    private final Slots in;
    private final Slots out;

    /**
     * What fits are made in.
     *
     * @param meets what air meets at the mount
     * @param stepPercent of the grid of duties
     */
    record Surroundings(
            FitCase fitCase,
            MachineModel model,
            WaterReach water,
            Machine.MountAir meets,
            StackAir air,
            int stepPercent,
            LoopFittings fittings) {}

    MountFits(Stack stack, Surroundings around) {
        this.around = around;
        List<Fitting> all = new ArrayList<>();
        for (Fan fan : around.fitCase().shapes().fansOf(stack.shape())) {
            if (!stack.shape().arrangement().hasRadiator()) {
                all.add(Fitting.of(stack, Optional.empty(), fan, around.fittings()));
            }
            for (Radiator radiator : around.fitCase().shapes().radiatorsOf(stack.shape())) {
                all.add(Fitting.of(stack, Optional.of(radiator), fan, around.fittings()));
            }
        }
        this.fittings = List.copyOf(all);
        this.in = new Slots(AirDirection.IN);
        this.out = new Slots(AirDirection.OUT);
    }

    /** The slots that blow some way. */
    Slots slots(AirDirection direction) {
        return direction == AirDirection.IN ? in : out;
    }

    /** What can be fitted, blowing one way, at each duty. */
    final class Slots {
        private final AirDirection direction;
        private final @Nullable Slot[] byDuty = new @Nullable Slot[Bounds.FULL_PERCENT + 1];

        private Slots(AirDirection direction) {
            this.direction = direction;
        }

        Slot at(int dutyPercent) {
            Slot known = byDuty[dutyPercent];
            if (known == null) {
                known = new Slot(MountFits.this, direction, dutyPercent);
                byDuty[dutyPercent] = known;
            }
            return known;
        }
    }

    int count() {
        return fittings.size();
    }

    /** What a fitting costs and how loud it is at a duty. */
    Floor.Figures figures(int index, int dutyPercent) {
        Fitting fitting = fittings.get(index);
        Blowing.Loudness loud = loudness(dutyPercent).get(index);
        return new Floor.Figures(
                fitting.cents(),
                fitting.leadDays(),
                loud.now().millionths(),
                loud.faster().millionths());
    }

    private List<Blowing.Loudness> loudness(int dutyPercent) {
        return loudness.computeIfAbsent(dutyPercent, duty -> {
            int faster = Math.min(Bounds.FULL_PERCENT, duty + around.stepPercent());
            List<Blowing.Loudness> out = new ArrayList<>();
            for (Fitting fitting : fittings) {
                out.add(new Blowing.Loudness(sound(fitting, duty), sound(fitting, faster)));
            }
            return out;
        });
    }

    private SoundPower sound(Fitting fitting, int dutyPercent) {
        return MountSound.of(mount(fitting, AirDirection.IN, dutyPercent));
    }

    private Machine.FanMount mount(Fitting fitting, AirDirection direction, int dutyPercent) {
        Stack stack = fitting.stack();
        int row = stack.shape().pattern().fans();
        return new Machine.FanMount(
                stack.frame().mount().id(),
                direction,
                new Machine.Fans(fitting.fan(), row, fitting.fans() / row, new Duty(dutyPercent)),
                around.meets(),
                fitting.radiator().map(r -> around.air().radiator(stack.frame().mount(), r)));
    }

    /** A fitting at work. */
    Blowing blowing(int index, AirDirection direction, int dutyPercent) {
        Fitting fitting = fittings.get(index);
        Machine.FanMount mount = mount(fitting, direction, dutyPercent);
        return new Blowing(
                fitting,
                mount,
                around.model().branch(mount, Nudge.NONE),
                draught(index, dutyPercent),
                figures(index, dutyPercent));
    }

    /** The number of a fitting of the same parts. */
    int indexOf(Fitting fitting) {
        for (int i = 0; i < fittings.size(); i++) {
            if (fittings.get(i).fan().equals(fitting.fan())
                    && fittings.get(i).radiator().equals(fitting.radiator())) {
                return i;
            }
        }
        throw new IllegalArgumentException("not among the fits: " + fitting);
    }

    /** The draught of a fitting, which both ways to blow share. */
    Draught draught(int index, int dutyPercent) {
        return draughts.computeIfAbsent((long) index * (Bounds.FULL_PERCENT + 1) + dutyPercent, k -> {
            Fitting fitting = fittings.get(index);
            Machine.FanMount outwards = mount(fitting, AirDirection.OUT, dutyPercent);
            return new Draught(
                    outwards,
                    around.model().branch(outwards, Nudge.NONE),
                    around.model(),
                    fitting.radiator().map(around.water()::sideWPerK).orElse(0.0));
        });
    }
}
