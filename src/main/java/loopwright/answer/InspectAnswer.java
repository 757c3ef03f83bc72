package loopwright.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import loopwright.catalog.brief.BriefLimits;
import loopwright.catalog.part.Reservoir;
import loopwright.fit.rules.Role;
import loopwright.loop.Duty;
import loopwright.loop.Machine;
import loopwright.loop.SoundPower;
import loopwright.loop.Steady;
import loopwright.loop.Swings;
import loopwright.loop.study.Effect;
import loopwright.loop.study.Quiet;
import loopwright.loop.study.Sensitivities;
import loopwright.loop.study.SpeedLimits;
import loopwright.loop.study.SpeedPoint;
import loopwright.loop.study.Speeds;
import loopwright.loop.study.WarmUp;

/** A build in full, with what is only worked out when it is asked for. */
public final class InspectAnswer {

    /** Rooms that are shown side by side, °C; the builder's usual question. */
    public static final List<Double> ROOMS_C = List.of(25.0, 30.0, 35.0);

    private final Inspection inspection;
    private final Supplier<NextSteps> steps;

    /** Inspects a build. */
    public InspectAnswer(Inspection inspection) {
        this.inspection = inspection;
        this.steps = Once.of(() -> new NextSteps(inspection));
    }

    /** The build and its state. */
    public Inspection inspection() {
        return inspection;
    }

    /** What single changes gain and cost. */
    public NextSteps steps() {
        return steps.get();
    }

    /** The coolant and the air inside in a room, each with its standard uncertainty. */
    public record InRoom(double roomC, double coolantC, double coolantK, double caseC, double caseK) {}

    /** The same build in other rooms. */
    public List<InRoom> rooms() {
        List<InRoom> out = new ArrayList<>();
        for (double roomC : ROOMS_C) {
            inspection
                    .inRoom(roomC)
                    .ifPresent(s -> out.add(new InRoom(
                            roomC,
                            s.state().water().meanC(),
                            s.plusMinus(Steady::coolantOverRoomK),
                            s.state().caseC(),
                            s.plusMinus(Steady::caseOverRoomK))));
        }
        return out;
    }

    /** How it warms up and what happens when something stops; empty where it finds no steady state. */
    public Optional<WarmUp> warmUp() {
        double reservoirML = inspection
                .build()
                .chosen()
                .find(Role.RESERVOIR, Reservoir.class)
                .map(Reservoir::coolantML)
                .orElse(0.0);
        return WarmUp.of(inspection.model(), inspection.machine(), reservoirML);
    }

    /** What small changes do to the coolant. */
    public List<Effect> sensitivities() {
        return Sensitivities.of(inspection.model(), inspection.machine());
    }

    /**
     * A duty of the curve.
     *
     * @param coolantK standard uncertainty of the coolant; absent where it finds no steady state
     */
    public record AtDuty(SpeedPoint point, OptionalDouble coolantK) {}

    /** Temperature and noise over the brief's grid of duties, full duty first. */
    public List<AtDuty> curve() {
        int step = inspection.fitCase().brief().terms().dutyStepPercent();
        List<Integer> duties = new ArrayList<>();
        for (int duty = FULL_PERCENT; duty > 0; duty -= step) {
            duties.add(duty);
        }
        List<AtDuty> out = new ArrayList<>();
        for (SpeedPoint point : Speeds.curve(inspection.model(), inspection.machine(), duties)) {
            SoundPower whole = point.sound().plus(inspection.supplySound());
            out.add(new AtDuty(
                    new SpeedPoint(point.dutyPercent(), whole, point.state()), plusMinus(point.dutyPercent())));
        }
        return out;
    }

    /** Full duty, percent. */
    private static final int FULL_PERCENT = 100;

    private OptionalDouble plusMinus(int dutyPercent) {
        Machine machine = inspection.machine();
        Machine slower = new Machine(
                machine.site(),
                machine.mounts().stream().map(m -> m.at(new Duty(dutyPercent))).toList(),
                machine.openings(),
                machine.water(),
                machine.caseHeatW());
        return Swings.find(inspection.model(), slower)
                .map(s -> OptionalDouble.of(s.plusMinus(Steady::coolantOverRoomK)))
                .orElse(OptionalDouble.empty());
    }

    /** The quietest duties that hold the brief's limits, each mount and the pump by itself; empty where none do. */
    public Optional<Quiet> quietest() {
        BriefLimits limits = inspection.fitCase().brief().limits();
        return Speeds.quietest(
                        inspection.model(),
                        inspection.machine(),
                        new SpeedLimits(
                                limits.coolantMaxC(),
                                limits.heat().orElse(BriefLimits.HeatLimits.NONE),
                                inspection.fitCase().catalog().practice()))
                .map(this::withSupply);
    }

    /** The supply is as loud at any duty: it does not change which duties are the quietest, only by how much. */
    private Quiet withSupply(Quiet quiet) {
        SoundPower whole = quiet.sound().plus(inspection.supplySound());
        double nowDBA = inspection.build().outcome().sound().levelDBA().orElse(0);
        return new Quiet(
                quiet.duties(),
                quiet.machine(),
                quiet.state(),
                whole,
                nowDBA - whole.levelDBA().orElse(0));
    }
}
