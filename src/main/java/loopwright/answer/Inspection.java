package loopwright.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.catalog.standard.Practice;
import loopwright.fit.FitCase;
import loopwright.fit.Growth;
import loopwright.fit.RoomLeft;
import loopwright.fit.Witness;
import loopwright.loop.Band;
import loopwright.loop.Junctions;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.MountSound;
import loopwright.loop.SoundPower;
import loopwright.loop.Steady;
import loopwright.loop.Swings;
import loopwright.loop.air.AirBranch;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.CaseFlow;
import loopwright.quantity.Units;
import loopwright.rank.Build;
import loopwright.rank.CoreHeat;
import loopwright.rank.RankResult.Ranked;

/** One build in full: its state, how sure that is, and where everything stands. */
public final class Inspection {

    private final FitCase fitCase;
    private final Build build;
    private final Witness witness;
    private final MachineModel model;
    private final Swings swings;

    /** Inspects a build. */
    public Inspection(FitCase fitCase, Ranked ranked) {
        this.fitCase = fitCase;
        this.build = ranked.build();
        this.witness = ranked.witness();
        this.model = Sites.model(fitCase);
        this.swings = Swings.of(model, build.machine());
    }

    /** The case that was asked about. */
    public FitCase fitCase() {
        return fitCase;
    }

    /** The build. */
    public Build build() {
        return build;
    }

    /** Where everything stands. */
    public Witness witness() {
        return witness;
    }

    /** How far each measure could grow, and what would still go on the mounts without a radiator. */
    public List<Growth> roomLeft() {
        return new RoomLeft(fitCase).of(witness);
    }

    /** The physics at the brief's site. */
    public MachineModel model() {
        return model;
    }

    /** The machine that the physics is asked about. */
    public Machine machine() {
        return build.machine();
    }

    /** Its steady state. */
    public Steady state() {
        return swings.state();
    }

    /** How far its figures swing. */
    public Swings swings() {
        return swings;
    }

    /** The band of the coolant over the room. */
    public Band coolantBand() {
        return swings.band(Steady::coolantOverRoomK);
    }

    /** The band of the case's air over the room. */
    public Band caseBand() {
        return swings.band(Steady::caseOverRoomK);
    }

    /**
     * A temperature with its standard uncertainty.
     *
     * @param stepK of it over the coolant at the block
     */
    public record Hot(String name, double temperatureC, double stepK, double plusMinusK) {}

    /** Parts under blocks. */
    public List<Hot> junctions() {
        List<Hot> out = new ArrayList<>();
        for (Junctions.Junction one : Junctions.of(machine(), state(), practice())) {
            out.add(new Hot(
                    one.name(), one.temperatureC(), one.stepK(), swings.plusMinusOf(temperatureOf(one.name()))));
        }
        return out;
    }

    /** The temperature of a part under a block that there is. */
    Swings.Figure temperatureOf(String block) {
        return (state, nudge) -> Junctions.of(machine(), state, practice(), nudge).stream()
                .filter(j -> j.name().equals(block))
                .findFirst()
                .orElseThrow()
                .temperatureC();
    }

    private Practice practice() {
        return fitCase.catalog().practice();
    }

    /**
     * A mount's air.
     *
     * @param flowM3PerH through the whole mount
     * @param fanPa the fans' pressure
     * @param pathPa lost in panel, filter, cover and gaps
     * @param corePa lost in the radiator
     * @param stalls whether the fans cannot hold against the pressure inside
     */
    public record MountFlow(
            Machine.FanMount mount, double flowM3PerH, double fanPa, double pathPa, double corePa, boolean stalls) {}

    /** The air of each mount with fans. */
    public List<MountFlow> airflows() {
        List<MountFlow> out = new ArrayList<>();
        CaseFlow flow = state().air();
        for (int i = 0; i < machine().mounts().size(); i++) {
            Machine.FanMount mount = machine().mounts().get(i);
            AirBranch branch = flow.air().branches().get(i);
            double whole = flow.wholeM3PerS(i);
            double fanPa = branch.fans().pressurePa(whole);
            double pathPa = whole > 0 ? branch.way().path().lossPa(whole) : 0;
            double helpPa = mount.direction() == AirDirection.OUT ? flow.insidePa() : -flow.insidePa();
            double corePa = mount.radiator().isPresent() && whole > 0 ? fanPa + helpPa - pathPa : 0;
            out.add(new MountFlow(mount, Units.m3PerH(whole), fanPa, pathPa, corePa, whole == 0));
        }
        return out;
    }

    /** Air through a passive opening, m³/h out of the case. */
    public record VentFlow(String name, double outM3PerH) {}

    /** The passive openings. */
    public List<VentFlow> vents() {
        List<VentFlow> out = new ArrayList<>();
        for (int i = 0; i < machine().openings().size(); i++) {
            out.add(new VentFlow(
                    machine().openings().get(i).name(),
                    Units.m3PerH(state().air().openingM3PerS(i))));
        }
        return out;
    }

    /** How loud one source is, dB(A) at 1 m. */
    public record Source(String name, double levelDBA) {}

    /** What sounds, loudest first. */
    public List<Source> sounds() {
        List<Source> out = new ArrayList<>();
        for (Machine.FanMount mount : machine().mounts()) {
            out.add(source(mount.mount() + " fans", MountSound.of(mount)));
        }
        out.add(source("pump", MountSound.of(machine().water().pump())));
        out.add(source("supply", supplySound()));
        out.sort((a, b) -> Double.compare(b.levelDBA(), a.levelDBA()));
        return out;
    }

    /** Its supply at the sum of all worst loads. */
    SoundPower supplySound() {
        return new CoreHeat(fitCase).supplySound(build.chosen());
    }

    /** Its electrics. */
    public Powering powering() {
        return new Powering(fitCase, build);
    }

    private static Source source(String name, SoundPower power) {
        OptionalDouble level = power.levelDBA();
        return new Source(name, level.orElse(0));
    }

    /** The inputs that the coolant's uncertainty comes from, largest first. */
    public List<Map.Entry<String, Double>> doubts() {
        List<Map.Entry<String, Double>> out =
                new ArrayList<>(swings.effects(Steady::coolantOverRoomK).entrySet());
        out.sort((a, b) -> Double.compare(Math.abs(b.getValue()), Math.abs(a.getValue())));
        return out;
    }

    /** The same machine in another room; empty where it has no steady state there. */
    public Optional<Swings> inRoom(double roomC) {
        return Swings.find(Sites.inRoom(fitCase, roomC), machine().inRoom(roomC));
    }
}
