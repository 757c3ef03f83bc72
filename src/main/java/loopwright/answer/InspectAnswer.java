package loopwright.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

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

    /** The coolant in a room; empty where nothing is steady. */
    public record InRoom(double roomC, double coolantC, double caseC) {}

    /** The same build in other rooms. */
    public List<InRoom> rooms() {
        List<InRoom> out = new ArrayList<>();
        for (double roomC : ROOMS_C) {
            inspection
                    .inRoom(roomC)
                    .ifPresent(s -> out.add(new InRoom(roomC, s.water().meanC(), s.caseC())));
        }
        return out;
    }
}
