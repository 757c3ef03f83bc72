package loopwright.loop.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.catalog.part.Radiator;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.Steady;
import loopwright.loop.air.AirPath;
import loopwright.quantity.Units;

/**
 * What small changes do to the coolant over the room, one at a time: faster fans, opener panels, more coolant, deeper and longer
 * radiators.
 *
 * <p><b>Units.</b> K for the step that is told with it.
 *
 * <p><b>Valid for</b> the machine as it is: each effect is a difference of two solves, not a slope, and two of them together do not
 * add. Changes that cannot be made (open panels, the longest radiators) are left out; fans at full
 * speed are told slower. A changed radiator is
 * a copy with the same fins, tubes and coolant loss; what a bench measured of it is left out on both sides of the difference.
 *
 * <p><b>Accuracy.</b> Right in sign and order; what is shared on both sides, the correlations' scatter, mostly falls out.
 */
public final class Sensitivities {

    /** Fans this much faster, dimensionless. */
    static final double FASTER = 1.1;

    /** Fans at full speed this much slower, dimensionless. */
    static final double SLOWER = 0.9;

    /** Panels this much opener, share of the face. */
    static final double OPENER = 0.1;

    /** More coolant, L/min. */
    static final double MORE_FLOW_L_PER_MIN = 1;

    /** Deeper cores, mm. */
    static final double DEEPER_MM = 1;

    private final MachineModel model;
    private final Machine machine;
    private final Steady before;
    private final List<Effect> effects = new ArrayList<>();

    private Sensitivities(MachineModel model, Machine machine, Steady before) {
        this.model = model;
        this.machine = machine;
        this.before = before;
    }

    /** The effects: all fans, then mount by mount, then the pump; none without a steady state. */
    public static List<Effect> of(MachineModel model, Machine machine) {
        return model.solve(machine)
                .found()
                .map(s -> new Sensitivities(model, machine, s).all())
                .orElse(List.of());
    }

    private List<Effect> all() {
        allFans();
        for (int i = 0; i < machine.mounts().size(); i++) {
            fans(i);
            panel(i);
            radiator(i);
        }
        new MoreCoolant(model, machine, before)
                .overRoomK(MORE_FLOW_L_PER_MIN)
                .ifPresent(k -> effects.add(new Effect("coolant flow", "+1 L/min", k - before.coolantOverRoomK())));
        return List.copyOf(effects);
    }

    private void allFans() {
        double most = 0;
        for (Machine.FanMount mount : machine.mounts()) {
            most = Math.max(most, factor(mount));
        }
        double asked = most < 1 ? SLOWER : FASTER;
        Machine changed = Changed.mounts(
                machine,
                machine.mounts().stream().map(m -> Changed.speedTimes(m, asked)).toList());
        add("speed of all fans", speedStep(most), machine, changed);
    }

    private void fans(int i) {
        Machine.FanMount mount = machine.mounts().get(i);
        Machine changed = Changed.mount(machine, i, Changed.speedTimes(mount, factor(mount)));
        add("speed of the fans on " + mount.mount(), speedStep(factor(mount)), machine, changed);
    }

    /** How much faster a mount's fans can be, at most {@link #FASTER}; at full speed, how much slower they are told. */
    private static double factor(Machine.FanMount mount) {
        double share = Changed.speedShare(mount);
        return share < 1 ? Math.min(FASTER, 1 / share) : SLOWER;
    }

    private static String speedStep(double factor) {
        return String.format(Locale.ROOT, "%+.1f %%", (factor - 1) * 100);
    }

    private void panel(int i) {
        Machine.FanMount mount = machine.mounts().get(i);
        AirPath path = mount.air().path();
        double step = Math.min(OPENER, 1 - path.openShare());
        if (step > 0) {
            AirPath opener = new AirPath(
                    Math.min(1, path.openShare() + step),
                    path.where(),
                    path.filterShare(),
                    path.cover(),
                    path.outsideDepthM());
            Machine.MountAir air = new Machine.MountAir(opener, mount.air().face());
            Machine after = Changed.mount(
                    machine,
                    i,
                    new Machine.FanMount(mount.mount(), mount.direction(), mount.fans(), air, mount.radiator()));
            add("free area of " + mount.mount(), String.format(Locale.ROOT, "+%.2f", step), machine, after);
        }
    }

    private void radiator(int i) {
        Machine.FanMount mount = machine.mounts().get(i);
        if (mount.radiator().isEmpty()) {
            return;
        }
        Radiator own = mount.radiator().get().radiator();
        Machine byFormula = Changed.mount(machine, i, with(mount, OtherRadiator.byFormula(own)));
        Optional<Radiator> deeper = OtherRadiator.deeper(own, DEEPER_MM);
        deeper.ifPresent(r -> add(
                "core depth of the radiator on " + mount.mount(),
                "+1 mm",
                byFormula,
                Changed.mount(machine, i, with(mount, r))));
        Optional<Radiator> longer = OtherRadiator.longer(own);
        longer.ifPresent(r -> add(
                "length of the radiator on " + mount.mount(),
                "+1 section of " + r.pattern().sizeMm(),
                byFormula,
                Changed.mount(machine, i, longer(mount, r))));
    }

    private static Machine.FanMount with(Machine.FanMount mount, Radiator radiator) {
        Machine.RadiatorAt at = mount.radiator().orElseThrow();
        return new Machine.FanMount(
                mount.mount(),
                mount.direction(),
                mount.fans(),
                mount.air(),
                Optional.of(new Machine.RadiatorAt(radiator, at.maskedShare(), at.gapM2())));
    }

    /** One fan more in the row, and a panel as open as before over all of them. */
    private static Machine.FanMount longer(Machine.FanMount mount, Radiator radiator) {
        Machine.Fans fans = mount.fans();
        AirPath.Face face = mount.air().face();
        double sizeM = radiator.pattern().sizeMm() * Units.M_PER_MM;
        AirPath.Face longer = new AirPath.Face(face.areaM2() + sizeM * sizeM, face.perimeterM() + 2 * sizeM);
        Machine.RadiatorAt at = mount.radiator().orElseThrow();
        double gapM2 = at.gapM2() * longer.perimeterM() / face.perimeterM();
        return new Machine.FanMount(
                mount.mount(),
                mount.direction(),
                new Machine.Fans(fans.fan(), fans.row() + 1, fans.layers(), fans.duty()),
                new Machine.MountAir(mount.air().path(), longer),
                Optional.of(new Machine.RadiatorAt(radiator, at.maskedShare(), gapM2)));
    }

    private void add(String what, String step, Machine from, Machine to) {
        Optional<Steady> was =
                from.equals(machine) ? Optional.of(before) : model.solve(from).found();
        Optional<Steady> is = model.solve(to).found();
        if (was.isPresent() && is.isPresent()) {
            effects.add(new Effect(
                    what, step, is.get().coolantOverRoomK() - was.get().coolantOverRoomK()));
        }
    }
}
