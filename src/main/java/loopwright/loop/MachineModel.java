package loopwright.loop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.standard.Practice;
import loopwright.loop.air.AirBranch;
import loopwright.loop.air.AirPath;
import loopwright.loop.air.AirResistance;
import loopwright.loop.air.CaseAir;
import loopwright.loop.air.CaseFlow;
import loopwright.loop.air.CoreFace;
import loopwright.loop.air.FanBank;
import loopwright.loop.exchange.CoreInAir;
import loopwright.loop.exchange.RadiatorCore;
import loopwright.loop.fluid.Air;
import loopwright.loop.fluid.Liquid;
import loopwright.quantity.Units;

/**
 * Puts a machine's parts together as the physics needs them, at one site, and solves it.
 *
 * <p>What only depends on a part and the site (a core in this air, a loss curve) is worked out once and kept, so a model may
 * be asked about many machines.
 *
 * <p>Loop order: reservoir, pump, blocks, radiators in the chassis's order. Where tube and fittings lie in between does not
 * matter: they are taken together.
 */
public final class MachineModel {

    private final Practice practice;
    private final Machine.Site site;
    private final Air air;
    private final AirPath.Medium medium;
    private final Map<String, RadiatorCore> cores = new HashMap<>();
    private final Map<String, CoreInAir> coresInAir = new HashMap<>();
    private final LoopParts loopParts;

    /** A model for a site. */
    public MachineModel(Practice practice, Machine.Site site) {
        this.practice = practice;
        this.site = site;
        this.loopParts = new LoopParts(practice, this);
        this.air = Air.at(site.roomC(), site.altitudeM());
        this.medium = new AirPath.Medium(
                air.densityKgPerM3(),
                air.viscosityPaS(),
                practice.air().panelHoleMm() * Units.M_PER_MM,
                practice.air().filterHoleMm() * Units.M_PER_MM);
    }

    /** The room's air. */
    public Air air() {
        return air;
    }

    /** Where it stands. */
    public Machine.Site site() {
        return site;
    }

    /** Solves a machine at this site. */
    public SteadyState solve(Machine machine) {
        return solve(machine, Nudge.NONE);
    }

    /**
     * Solves a machine with an input off its value.
     *
     * @throws IllegalArgumentException if the machine stands elsewhere
     */
    public SteadyState solve(Machine machine, Nudge nudge) {
        if (!machine.site().equals(site)) {
            throw new IllegalArgumentException(
                    "the model is for " + site + " but the machine stands at " + machine.site());
        }
        List<AirBranch> branches = new ArrayList<>();
        machine.mounts().forEach(m -> branches.add(branch(m, nudge)));
        List<AirResistance> openings = new ArrayList<>();
        machine.openings().forEach(v -> openings.add(opening(v, nudge)));
        CaseFlow flow = new CaseAir(branches, openings).balance();
        return solve(machine, flow, nudge);
    }

    /** Solves a machine whose air is known. */
    public SteadyState solve(Machine machine, CaseFlow flow, Nudge nudge) {
        double heatW = machine.caseHeatW() * nudge.factor(Scatter.CASE_HEAT_NAME, Scatter.CASE_HEAT);
        return new LoopBalance(
                        loopParts.liquid(machine.water().coolant()),
                        loopParts.head(machine.water().pump(), nudge),
                        loopParts.stations(machine, flow, nudge),
                        new LoopBalance.Surroundings(air, flow, heatW))
                .solve();
    }

    /** The air branch of a mount with fans. */
    public AirBranch branch(Machine.FanMount mount, Nudge nudge) {
        Machine.Fans fans = mount.fans();
        FanBank bank = new FanBank(fans.fan(), fans.row(), fans.layers(), fans.duty(), air.densityKgPerM3())
                .scaled(nudge.factor(Scatter.fan(fans.fan().id()), Scatter.FAN));
        AirResistance path = mount.air()
                .path()
                .resistance(mount.air().face(), medium)
                .times(nudge.factor(Scatter.PATH_NAME, Scatter.PATH)
                        * nudge.factor(Scatter.opening(mount.mount()), Scatter.OPENING));
        double coreFactor = nudge.factor(Scatter.CORE_LOSS_NAME, Scatter.CORE_LOSS);
        return new AirBranch(
                mount.mount(),
                mount.direction(),
                bank,
                new AirBranch.Way(path, mount.radiator().map(r -> face(r, coreFactor))));
    }

    private CoreFace face(Machine.RadiatorAt at, double lossFactor) {
        CoreInAir core = inAir(at.radiator());
        return new CoreFace(
                lossFactor == 1 ? core : core.scaled(lossFactor),
                core(at.radiator()).faceAreaM2() * (1 - at.maskedShare()),
                CoreFace.leakOf(at.gapM2(), air.densityKgPerM3()));
    }

    /** What a passive opening resists. */
    public AirResistance opening(Machine.Vent vent, Nudge nudge) {
        AirResistance plain = vent.air()
                .map(a -> a.path().passive(a.face(), medium))
                .orElseGet(() -> AirPath.leak(vent.gapM2(), medium));
        return plain.times(nudge.factor(Scatter.PATH_NAME, Scatter.PATH)
                * nudge.factor(Scatter.opening(vent.name()), Scatter.OPENING));
    }

    /** A coolant's properties. */
    public Liquid liquid(Coolant coolant) {
        return loopParts.liquid(coolant);
    }

    /** A radiator's core. */
    public RadiatorCore core(Radiator radiator) {
        return cores.computeIfAbsent(radiator.id(), id -> RadiatorCore.of(radiator, practice.core()));
    }

    /** A radiator's core in this air. */
    public CoreInAir inAir(Radiator radiator) {
        return coresInAir.computeIfAbsent(radiator.id(), id -> core(radiator).in(air));
    }

    /** What a mount's radiator conducts alone, breathing the room, with plenty of coolant, W/K; 0 without one. */
    public double ratedConductanceWPerK(Machine.FanMount mount) {
        if (mount.radiator().isEmpty()) {
            return 0;
        }
        AirBranch branch = branch(mount, Nudge.NONE);
        double coreFlow = branch.coreFlowM3PerS(0, 0);
        if (coreFlow == 0) {
            return 0;
        }
        Machine.RadiatorAt at = mount.radiator().get();
        double area = core(at.radiator()).faceAreaM2() * (1 - at.maskedShare());
        double airSide = (1 - at.maskedShare()) * inAir(at.radiator()).airSideWPerK(coreFlow / area);
        return loopParts.ratedConductanceWPerK(
                core(at.radiator()), airSide, coreFlow * air.densityKgPerM3() * air.heatCapacityJPerKgK());
    }

    /** Upper bound of what the coolant's side of a radiator conducts in a loop, with coolant up to some warmth, W/K. */
    public double waterSideMostWPerK(Machine.Water water, Radiator radiator, double warmC) {
        return loopParts.waterSideMostWPerK(water, core(radiator), warmC);
    }
}
